using CrewBot.Core.Fish;
using CrewBot.Core.Knowledge;

namespace CrewBot.Core.Derbies.Scoring;

/// <summary>What one fish is worth. Values are exact decimals: nothing is rounded before ranking.</summary>
public abstract record FishMeasure
{
    /// <summary>The worth of a fish.</summary>
    /// <param name="entry">The entry.</param>
    /// <param name="scored">Its length on the board's lines.</param>
    /// <param name="species">What the trade knows of fish.</param>
    /// <returns>From zero; null when this measure has no value for the fish.</returns>
    public abstract decimal? ValueOf(EntryState entry, ExactLength scored, RecordSet<Species> species);
}
