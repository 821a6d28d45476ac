using CrewBot.Core.Fish;

namespace CrewBot.Core.Derbies;

/// <summary>A fish that counts.</summary>
/// <param name="Entry">The entry.</param>
/// <param name="Scored">Its length on the board's lines, penalty taken off.</param>
/// <param name="Value">What it is worth by the scoring rule.</param>
public sealed record ScoredFish(EntryState Entry, ExactLength Scored, decimal Value)
{
    /// <summary>Most worth first; then the longer, the earlier caught, the earlier received. The number only keeps lists steady.</summary>
    internal static int Compare(ScoredFish one, ScoredFish other) =>
        other.Value.CompareTo(one.Value) is var value and not 0 ? value
        : other.Scored.Nanometres.CompareTo(one.Scored.Nanometres) is var length and not 0 ? length
        : one.Entry.CaughtAt.CompareTo(other.Entry.CaughtAt) is var caught and not 0 ? caught
        : one.Entry.ReceivedAt.CompareTo(other.Entry.ReceivedAt) is var received and not 0 ? received
        : one.Entry.Number.CompareTo(other.Entry.Number);
}
