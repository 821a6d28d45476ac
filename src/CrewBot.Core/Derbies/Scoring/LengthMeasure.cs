using CrewBot.Core.Fish;
using CrewBot.Core.Knowledge;

namespace CrewBot.Core.Derbies.Scoring;

/// <summary>A fish is worth its scored length, in the unit of the board.</summary>
public sealed record LengthMeasure : FishMeasure
{
    public override decimal? ValueOf(EntryState entry, ExactLength scored, RecordSet<Species> species) => scored.Number;
}
