namespace CrewBot.Storage.Outbox;

/// <summary>A message that was given up.</summary>
/// <param name="Id">Its number.</param>
/// <param name="Purpose">What it is about.</param>
/// <param name="Attempts">How often it was tried.</param>
/// <param name="Fault">Why the last attempt failed.</param>
public sealed record DeadLetter(long Id, string Purpose, long Attempts, string Fault);
