using CrewBot.Core.Fish;

namespace CrewBot.Core.Derbies.Ledger;

/// <summary>A steward put another length in place of the one measured; the catch time stays.</summary>
public sealed record Amended(int Number, DateTimeOffset At, long By, int Entry, ExactLength Measured) : EntryEvent(Number, At, By, Entry)
{
    internal override EntryState Change(EntryState entry) => entry with { Measured = Measured };
}
