using CrewBot.Core.Fish;

namespace CrewBot.Core.Derbies.Ledger;

/// <summary>A steward took something off a fish; with zero, gave it back.</summary>
public sealed record Penalised(int Number, DateTimeOffset At, long By, int Entry, ExactLength Penalty, string Reason) : EntryEvent(Number, At, By, Entry)
{
    internal override EntryState Change(EntryState entry) => entry with { Penalty = Penalty.Nanometres, Reason = Reason };
}
