namespace CrewBot.Storage.Outbox;

/// <summary>A platform will not take a message, however often it is tried.</summary>
/// <param name="message">What the platform said.</param>
public sealed class MessageRefusedException(string message) : Exception(message);
