using SkiaSharp;

namespace CrewBot.Drawing.Inks;

/// <summary>The colours of a picture.</summary>
/// <remarks>
/// Hues are blue and orange, which readers with the common kinds of colour blindness tell apart; meaning is carried by
/// shape and label all the same.
/// </remarks>
public sealed class Theme
{
    private readonly IReadOnlyDictionary<Ink, SKColor> _colours;

    private Theme(string name, IReadOnlyDictionary<Ink, SKColor> colours) => (Name, _colours) = (name, colours);

    /// <summary>For chats on a light ground.</summary>
    public static Theme Light { get; } = new("light", new Dictionary<Ink, SKColor>
    {
        [Ink.Paper] = SKColor.Parse("#FBFAF6"),
        [Ink.Text] = SKColor.Parse("#14212B"),
        [Ink.Quiet] = SKColor.Parse("#4A5A66"),
        [Ink.Rule] = SKColor.Parse("#C6CCCF"),
        [Ink.Tackle] = SKColor.Parse("#22485E"),
        [Ink.Accent] = SKColor.Parse("#1B6392"),
        [Ink.Warning] = SKColor.Parse("#A8440B"),
        [Ink.Water] = SKColor.Parse("#DCEAF0"),
        [Ink.Ice] = SKColor.Parse("#FFFFFF"),
        [Ink.Bottom] = SKColor.Parse("#CFC5B2"),
    });

    /// <summary>For chats on a dark ground.</summary>
    public static Theme Dark { get; } = new("dark", new Dictionary<Ink, SKColor>
    {
        [Ink.Paper] = SKColor.Parse("#17212A"),
        [Ink.Text] = SKColor.Parse("#F1F3F0"),
        [Ink.Quiet] = SKColor.Parse("#B3BEC5"),
        [Ink.Rule] = SKColor.Parse("#44525D"),
        [Ink.Tackle] = SKColor.Parse("#A9D3E6"),
        [Ink.Accent] = SKColor.Parse("#7CC3EA"),
        [Ink.Warning] = SKColor.Parse("#FFAE6B"),
        [Ink.Water] = SKColor.Parse("#22394A"),
        [Ink.Ice] = SKColor.Parse("#4A6475"),
        [Ink.Bottom] = SKColor.Parse("#4D4637"),
    });

    public string Name { get; }

    internal SKColor this[Ink ink] => _colours[ink];

    /// <summary>How well one ink is read on another, as the contrast ratio of WCAG 2.2 (from 1 to 21).</summary>
    internal double Contrast(Ink one, Ink other)
    {
        var (a, b) = (Luminance(this[one]), Luminance(this[other]));
        return (Math.Max(a, b) + 0.05) / (Math.Min(a, b) + 0.05);
    }

    // WCAG 2.2, "relative luminance".
    private static double Luminance(SKColor colour) =>
        (0.2126 * Linear(colour.Red)) + (0.7152 * Linear(colour.Green)) + (0.0722 * Linear(colour.Blue));

    private static double Linear(byte channel)
    {
        var share = channel / 255.0;
        return share <= 0.04045 ? share / 12.92 : Math.Pow((share + 0.055) / 1.055, 2.4);
    }
}
