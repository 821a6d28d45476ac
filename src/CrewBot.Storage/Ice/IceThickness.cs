using CrewBot.Core.Fish;
using CrewBot.Storage.Catches;

namespace CrewBot.Storage.Ice;

/// <summary>A thickness as it was measured, to the nanometre and in the unit it was given in.</summary>
/// <param name="Nm">Nanometres.</param>
/// <param name="Unit">The unit's word.</param>
public sealed record IceThickness(long Nm, string Unit)
{
    public static IceThickness? Of(ExactLength? length) =>
        length is { } exact ? new(exact.Nanometres, StoredUnits.WordOf(exact)!) : null;

    public ExactLength ToExact() => StoredUnits.LengthOf(Nm, Unit)!.Value;
}
