namespace CrewBot.Storage.Outbox;

/// <summary>Where a post stands on its platform.</summary>
/// <param name="Place">The channel or thread; for a direct message the channel that was opened for it.</param>
/// <param name="Id">The message in it.</param>
public sealed record PostMessage(string Place, string Id);
