namespace CrewBot.Chat.Posts;

/// <summary>A platform will never do what was asked of it: no such channel, no right to write there.</summary>
/// <param name="message">What the platform said.</param>
public sealed class PostImpossibleException(string message) : Exception(message);
