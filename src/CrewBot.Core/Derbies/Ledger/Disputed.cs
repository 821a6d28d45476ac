namespace CrewBot.Core.Derbies.Ledger;

/// <summary>Somebody protested against an entry: it does not count until a steward has ruled.</summary>
public sealed record Disputed(int Number, DateTimeOffset At, long By, int Entry, string Reason) : EntryEvent(Number, At, By, Entry)
{
    internal override EntryState Change(EntryState entry) => entry with { IsDisputed = true, Reason = Reason };
}
