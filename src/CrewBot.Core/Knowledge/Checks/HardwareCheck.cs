using UnitsNet;

namespace CrewBot.Core.Knowledge.Checks;

/// <summary>What must hold of a swivel, snap or split ring.</summary>
internal static class HardwareCheck
{
    private const double StrongestPounds = 1000;

    public static IEnumerable<Misfit> Misfits(Hardware piece, TradeKnowledge all)
    {
        foreach (var misfit in FieldCheck.Text("size", piece.Size, 10))
        {
            yield return misfit;
        }

        if (!(piece.Rated > Force.Zero && piece.Rated.PoundsForce <= StrongestPounds))
        {
            yield return new("rated", "A rated strength lies above 0 and up to 1000 lb.");
        }

        if (all.Hardware.First(other => other.Kind == piece.Kind && other.Size == piece.Size).Key is var first && first != piece.Key)
        {
            yield return new("size", $"{first} is that kind and size already: change that record instead.");
        }
    }
}
