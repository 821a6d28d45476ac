namespace CrewBot.Core.Derbies.Ledger;

/// <summary>An angler withdrew from the derby, and all their fish with them; joining again brings them back.</summary>
public sealed record Left(int Number, DateTimeOffset At, long By, long Angler) : LedgerEvent(Number, At, By);
