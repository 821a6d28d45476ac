namespace CrewBot.Storage.Outbox;

/// <summary>A platform will not take a post, however often it is tried.</summary>
/// <param name="message">What the platform said.</param>
public sealed class PostRefusedException(string message) : Exception(message);
