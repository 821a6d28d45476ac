using UnitsNet;

namespace CrewBot.Core.Knowledge.Checks;

/// <summary>What must hold of a swivel, snap or split ring.</summary>
internal static class HardwareCheck
{
    private const int SizeLength = 10;
    private const double StrongestPounds = 1000;

    public static IEnumerable<Misfit> Misfits(Hardware piece, TradeKnowledge all) =>
    [
        .. FieldCheck.Text("size", piece.Size, SizeLength),
        .. FieldCheck.Alone(
            piece, all.Hardware, "size", "that kind and size", other => (other.Kind, other.Size) == (piece.Kind, piece.Size)),
        .. Strength(piece),
    ];

    private static IEnumerable<Misfit> Strength(Hardware piece)
    {
        if (!(piece.Rated > Force.Zero && piece.Rated.PoundsForce <= StrongestPounds))
        {
            yield return new("rated", "A rated strength lies above 0 and up to 1000 lb.");
        }
    }
}
