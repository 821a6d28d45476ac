using CrewBot.Core.Fish;
using CrewBot.Core.Knowledge;

namespace CrewBot.Core.Derbies.Scoring;

/// <summary>A fish is worth its scored length times a factor of its species.</summary>
/// <param name="Factors">Points per unit of the board, by species; a species without one scores nothing.</param>
public sealed record PointsMeasure(IReadOnlyDictionary<string, decimal> Factors) : FishMeasure
{
    public override decimal? ValueOf(EntryState entry, ExactLength scored, RecordSet<Species> species) =>
        Factors.TryGetValue(entry.Species, out var factor) ? scored.Number * factor : null;
}
