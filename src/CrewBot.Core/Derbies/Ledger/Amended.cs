using CrewBot.Core.Fish;

namespace CrewBot.Core.Derbies.Ledger;

/// <summary>A steward put another length in place of the one measured; the catch time stays.</summary>
/// <param name="Number">Its place in the record.</param>
/// <param name="At">When.</param>
/// <param name="By">The steward.</param>
/// <param name="Entry">The entry.</param>
/// <param name="Measured">The right length.</param>
/// <param name="Reason">Why; null in records of earlier versions.</param>
public sealed record Amended(int Number, DateTimeOffset At, long By, int Entry, ExactLength Measured, string? Reason = null) : EntryEvent(Number, At, By, Entry)
{
    internal override EntryState Change(EntryState entry) => entry with { Measured = Measured };
}
