namespace CrewBot.Core.Derbies.Ledger;

/// <summary>Something that was written in a derby's record. Nothing is ever struck out.</summary>
/// <param name="Number">Its place in the record, from 1.</param>
/// <param name="At">When it was written, by the server's clock.</param>
/// <param name="By">Number of the member who caused it.</param>
public abstract record LedgerEvent(int Number, DateTimeOffset At, long By);
