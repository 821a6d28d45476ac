namespace CrewBot.Chat.Posts;

/// <summary>Somebody has removed a post.</summary>
public sealed class PostGoneException(string message) : Exception(message);
