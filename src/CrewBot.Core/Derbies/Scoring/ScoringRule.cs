using CrewBot.Core.Fish;
using CrewBot.Core.Knowledge;

namespace CrewBot.Core.Derbies.Scoring;

/// <summary>How a derby scores: what a fish is worth, and which fish are summed.</summary>
/// <param name="Measure">The worth of a fish.</param>
/// <param name="Selection">The fish that are summed.</param>
public sealed record ScoringRule(FishMeasure Measure, FishSelection Selection)
{
    // A total of quotients is a hair off its exact value; what differs beyond the 18th place is that hair.
    private const int Places = 18;

    /// <summary>The longest fish.</summary>
    public static ScoringRule Longest { get; } = BestTotal(1);

    /// <summary>The summed length of the best fish.</summary>
    public static ScoringRule BestTotal(int most) => new(new LengthMeasure(), new FishSelection(most));

    /// <summary>The worth of a fish; null when the rule has none for it.</summary>
    internal decimal? ValueOf(EntryState entry, ExactLength scored, RecordSet<Species> species) =>
        Measure.ValueOf(entry, scored, species);

    /// <summary>Sums up.</summary>
    /// <param name="who">Whose fish they are.</param>
    /// <param name="fish">Best first.</param>
    internal Tally TallyOf(Competitor who, IReadOnlyList<ScoredFish> fish)
    {
        var (used, spare) = Selection.Part(fish);
        return new Tally(who, decimal.Round(used.Sum(one => one.Value), Places), used, spare);
    }
}
