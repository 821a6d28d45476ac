namespace CrewBot.Core.Derbies.Ledger;

/// <summary>A steward ruled on a protest.</summary>
public sealed record Ruled(int Number, DateTimeOffset At, long By, int Entry, bool Stands, string Reason) : EntryEvent(Number, At, By, Entry)
{
    internal override EntryState Change(EntryState entry) => entry with { IsDisputed = false, Accepted = Stands, Reason = Reason };
}
