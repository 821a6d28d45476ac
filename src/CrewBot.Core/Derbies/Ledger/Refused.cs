namespace CrewBot.Core.Derbies.Ledger;

/// <summary>A steward refused an entry that waited.</summary>
public sealed record Refused(int Number, DateTimeOffset At, long By, int Entry, string Reason) : EntryEvent(Number, At, By, Entry)
{
    internal override EntryState Change(EntryState entry) => entry with { Accepted = false, Reason = Reason };
}
