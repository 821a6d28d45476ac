using CrewBot.Core.Fish;
using CrewBot.Core.Knowledge;

namespace CrewBot.Core.Derbies.Scoring;

/// <summary>Every fish is worth one.</summary>
public sealed record CountMeasure : FishMeasure
{
    public override decimal? ValueOf(EntryState entry, ExactLength scored, RecordSet<Species> species) => 1;
}
