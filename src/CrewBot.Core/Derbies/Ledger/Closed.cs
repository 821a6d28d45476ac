namespace CrewBot.Core.Derbies.Ledger;

/// <summary>A steward closed the derby: no more entries, joining or leaving.</summary>
public sealed record Closed(int Number, DateTimeOffset At, long By) : LedgerEvent(Number, At, By);
