namespace CrewBot.Core.Derbies.Ledger;

/// <summary>A steward took an entry that waited.</summary>
public sealed record Accepted(int Number, DateTimeOffset At, long By, int Entry) : EntryEvent(Number, At, By, Entry)
{
    internal override EntryState Change(EntryState entry) => entry with { Accepted = true };
}
