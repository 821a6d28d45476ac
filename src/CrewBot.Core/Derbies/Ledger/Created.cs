namespace CrewBot.Core.Derbies.Ledger;

/// <summary>The derby was created.</summary>
public sealed record Created(int Number, DateTimeOffset At, long By) : LedgerEvent(Number, At, By);
