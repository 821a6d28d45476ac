using CrewBot.Core.Fish;
using CrewBot.Core.Knowledge;

namespace CrewBot.Core.Derbies.Scoring;

/// <summary>
/// A fish is worth its relative weight, in per cent. It needs a scale, so it suits kept fish; a fish that was not weighed,
/// or is too short for its species' equation, scores nothing.
/// </summary>
public sealed record ConditionMeasure : FishMeasure
{
    public override decimal? ValueOf(EntryState entry, ExactLength scored, RecordSet<Species> species) =>
        entry.Weight is { } weight && entry.Measured.Nanometres > 0 && species.Has(entry.Species)
            && RelativeWeight.Of(species[entry.Species], entry.Measured.Length, weight.Mass) is { } relative
            ? (decimal)relative.Share.Percent
            : null;
}
