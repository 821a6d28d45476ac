namespace CrewBot.Core.Derbies.Ledger;

/// <summary>Something that was written about an entry.</summary>
/// <param name="Number">Its place in the record, from 1.</param>
/// <param name="At">When it was written, by the server's clock.</param>
/// <param name="By">Number of the member who caused it.</param>
/// <param name="Entry">Number of the entry.</param>
public abstract record EntryEvent(int Number, DateTimeOffset At, long By, int Entry) : LedgerEvent(Number, At, By)
{
    /// <summary>What the entry says after this.</summary>
    internal abstract EntryState Change(EntryState entry);
}
