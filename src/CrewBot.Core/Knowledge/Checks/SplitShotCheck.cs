using UnitsNet;

namespace CrewBot.Core.Knowledge.Checks;

/// <summary>What must hold of a split shot.</summary>
internal static class SplitShotCheck
{
    private const int SizeLength = 10;
    private const double HeaviestGrams = 100;

    public static IEnumerable<Misfit> Misfits(SplitShot shot, TradeKnowledge all) =>
    [
        .. FieldCheck.Text("size", shot.Size, SizeLength),
        .. FieldCheck.Alone(
            shot, all.SplitShot, "size", "that size on that scale", other => (other.Scale, other.Size) == (shot.Scale, shot.Size)),
        .. Weight(shot),
    ];

    private static IEnumerable<Misfit> Weight(SplitShot shot)
    {
        if (!(shot.Mass > Mass.Zero && shot.Mass.Grams <= HeaviestGrams))
        {
            yield return new("mass", "A shot's mass lies above 0 and up to 100 g.");
        }
    }
}
