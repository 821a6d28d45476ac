namespace CrewBot.Chat.Posts;

/// <summary>Where a post stands.</summary>
/// <param name="Place">The channel or thread.</param>
/// <param name="Id">The post in it.</param>
public sealed record Posted(string Place, string Id);
