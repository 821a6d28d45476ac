using CrewBot.Core.Fish;
using CrewBot.Core.Knowledge;

namespace CrewBot.Core.Derbies.Scoring;

/// <summary>
/// A fish is worth its scored length as a percentage of its species' trophy length, so that a fine perch can beat a
/// middling pike. The table of the board's unit holds; a species without length categories scores nothing.
/// </summary>
/// <remarks>Trophy lengths: Gabelhouse (1984) and the later authors named in each species' record.</remarks>
public sealed record TrophyShareMeasure : FishMeasure
{
    public override decimal? ValueOf(EntryState entry, ExactLength scored, RecordSet<Species> species) =>
        species.Has(entry.Species) && species[entry.Species].LengthCategories is { } tables
            ? 100m * scored.Nanometres / (decimal)ExactLength.NanometresOf(tables.For(scored.Family).Trophy)
            : null;
}
