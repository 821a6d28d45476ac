namespace CrewBot.Storage.Outbox;

/// <summary>Something that must be posted.</summary>
/// <param name="Id">Its number.</param>
/// <param name="Nonce">The same at every attempt, so that a platform shows it once.</param>
/// <param name="Purpose">What it is about, which decides the channel: <c>catch</c>, <c>derby</c>, <c>ice</c>, <c>trip</c>.</param>
/// <param name="Body">What is posted: a reply as JSON.</param>
/// <param name="Attempts">How often it was tried in vain.</param>
public sealed record OutboxMessage(long Id, string Nonce, string Purpose, string Body, long Attempts);
