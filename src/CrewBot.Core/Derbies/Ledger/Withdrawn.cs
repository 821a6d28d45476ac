namespace CrewBot.Core.Derbies.Ledger;

/// <summary>An entry was taken back.</summary>
public sealed record Withdrawn(int Number, DateTimeOffset At, long By, int Entry) : EntryEvent(Number, At, By, Entry)
{
    internal override EntryState Change(EntryState entry) => entry with { IsWithdrawn = true };
}
