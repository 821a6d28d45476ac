using CrewBot.Core.Pictures;
using UnitsNet;

namespace CrewBot.Drawing.Rigs;

/// <summary>How long leaders are drawn: those of one picture alike, so that they can be compared.</summary>
/// <param name="PixelsPerMetre">The scale.</param>
/// <param name="Unit">Whether their rulers count half feet or tens of centimetres.</param>
internal sealed record LeaderScale(double PixelsPerMetre, RulerUnit Unit)
{
    private const double UsualPixelsPerMetre = 230;
    private const double MostPixels = 380;

    /// <summary>The scale of a picture.</summary>
    /// <param name="picture">The rigs.</param>
    /// <param name="least">As long as the label beside the shortest is high, where the longest allows it.</param>
    public static LeaderScale For(RigPicture picture, float least)
    {
        var lengths = picture.Rigs.SelectMany(rig => rig.Parts).Where(IsLeader).Select(part => part.Length!.Value.Meters).ToList();
        return new(
            lengths.Count == 0 ? UsualPixelsPerMetre : Math.Min(MostPixels / lengths.Max(), Math.Max(UsualPixelsPerMetre, least / lengths.Min())),
            picture.Ruler);
    }

    public static bool IsLeader(PicturedPart part) =>
        part is { Kind: PartKind.Braid or PartKind.Strand or PartKind.Wire, Length: not null };

    /// <summary>From one mark of a ruler to the next.</summary>
    public float StepPixels => Pixels(Unit == RulerUnit.Inches ? Length.FromInches(6) : Length.FromCentimeters(10));

    /// <summary>What the marks count.</summary>
    public string UnitName => Unit == RulerUnit.Inches ? "in" : "cm";

    /// <summary>The number at a mark so many pixels down, in whole units.</summary>
    public int NumberAt(float pixels) => (int)Math.Round(pixels / PixelsPerMetre * (Unit == RulerUnit.Inches ? Length.FromMeters(1).Inches : 100));

    public float Pixels(Length length) => (float)(length.Meters * PixelsPerMetre);
}
