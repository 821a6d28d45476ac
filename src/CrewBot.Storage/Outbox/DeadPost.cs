namespace CrewBot.Storage.Outbox;

/// <summary>A post that was given up, without what it says.</summary>
/// <param name="Crew">The key of the crew.</param>
/// <param name="Key">What it is.</param>
/// <param name="Place">Where it should stand.</param>
/// <param name="Attempts">How often it was tried.</param>
/// <param name="Fault">Why the last attempt failed.</param>
public sealed record DeadPost(string Crew, string Key, string Place, long Attempts, string Fault);
