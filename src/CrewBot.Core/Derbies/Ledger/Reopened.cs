namespace CrewBot.Core.Derbies.Ledger;

/// <summary>A steward opened the derby again.</summary>
public sealed record Reopened(int Number, DateTimeOffset At, long By) : LedgerEvent(Number, At, By);
