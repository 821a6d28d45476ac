using CrewBot.Drawing.Inks;
using CrewBot.Drawing.Sheets;

namespace CrewBot.Drawing.Tests;

/// <summary>What holds for every picture, whatever it shows.</summary>
internal static class SheetChecks
{
    /// <summary>WCAG 2.2, success criterion 1.4.3.</summary>
    private const double LeastContrast = 4.5;

    /// <summary>Lists what is wrong; empty when nothing is.</summary>
    public static IReadOnlyList<string> FaultsOf(Sheet sheet)
    {
        var paper = new Box(0, 0, Sheet.Width, sheet.Height);
        var texts = sheet.Texts.ToList();
        return
        [
            .. texts.Where(text => !paper.Holds(text.Box)).Select(text => $"'{text.Text}' leaves the picture"),
            .. texts.Where(text => text.Size < Sheet.SmallText).Select(text => $"'{text.Text}' is too small"),
            .. texts.SelectMany((text, index) => texts.Skip(index + 1)
                .Where(other => text.Box.Overlaps(other.Box))
                .Select(other => $"'{text.Text}' overlaps '{other.Text}'")),
            .. texts.SelectMany(text => new[] { Theme.Light, Theme.Dark }
                .Where(theme => theme.Contrast(text.Ink, text.On) < LeastContrast)
                .Select(theme => $"{text.Ink} on {text.On} has too little contrast in {theme.Name}")),
        ];
    }
}
