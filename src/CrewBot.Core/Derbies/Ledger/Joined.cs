namespace CrewBot.Core.Derbies.Ledger;

/// <summary>An angler joined, or changed teams.</summary>
public sealed record Joined(int Number, DateTimeOffset At, long By, long Angler, string? Team) : LedgerEvent(Number, At, By);
