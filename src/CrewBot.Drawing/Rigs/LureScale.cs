using CrewBot.Core.Pictures;
using UnitsNet;

namespace CrewBot.Drawing.Rigs;

/// <summary>How large lures are drawn: all of one picture alike, so that they can be compared.</summary>
/// <param name="PixelsPerMetre">The scale.</param>
/// <param name="Unit">What the ruler beside a lure counts.</param>
internal sealed record LureScale(double PixelsPerMetre, RulerUnit Unit)
{
    private const double LargestPixels = 210;
    private const double LargestScale = 2400; // a 4-cm lure is then as long as three rows of text are high

    public static LureScale For(RigPicture picture)
    {
        var longest = picture.Rigs
            .SelectMany(rig => rig.Parts)
            .Where(part => IsLure(part.Kind))
            .Max(part => part.Length?.Meters) ?? 0;
        return new LureScale(longest > 0 ? Math.Min(LargestScale, LargestPixels / longest) : LargestScale, picture.Ruler);
    }

    public static bool IsLure(PartKind kind) => kind is PartKind.Jig or PartKind.Spoon or PartKind.Swimmer or PartKind.DeadFish;

    public float Pixels(Length length) => (float)(length.Meters * PixelsPerMetre);

    /// <summary>One unit of the ruler, in pixels.</summary>
    public float UnitPixels => Pixels(Unit == RulerUnit.Inches ? Length.FromInches(1) : Length.FromCentimeters(1));

    /// <summary>The units it takes to reach the end of a lure.</summary>
    public int UnitsFor(Length length) =>
        Math.Max(1, (int)Math.Ceiling((Unit == RulerUnit.Inches ? length.Inches : length.Centimeters) - 0.01));

    public string UnitName => Unit == RulerUnit.Inches ? "in" : "cm";
}
