using UnitsNet;

namespace CrewBot.Core.Knowledge.Checks;

/// <summary>What must hold of a split shot.</summary>
internal static class SplitShotCheck
{
    private const double HeaviestGrams = 100;

    public static IEnumerable<Misfit> Misfits(SplitShot shot, TradeKnowledge all)
    {
        foreach (var misfit in FieldCheck.Text("size", shot.Size, 10))
        {
            yield return misfit;
        }

        if (!(shot.Mass > Mass.Zero && shot.Mass.Grams <= HeaviestGrams))
        {
            yield return new("mass", "A shot's mass lies above 0 and up to 100 g.");
        }

        if (all.SplitShot.First(other => other.Scale == shot.Scale && other.Size == shot.Size).Key is var first && first != shot.Key)
        {
            yield return new("size", $"{first} is that size on that scale already: change that record instead.");
        }
    }
}
