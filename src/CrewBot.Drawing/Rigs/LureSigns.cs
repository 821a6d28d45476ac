using CrewBot.Core.Pictures;
using CrewBot.Drawing.Inks;
using CrewBot.Drawing.Sheets;

namespace CrewBot.Drawing.Rigs;

/// <summary>Draws a lure as long as it is, with its hooks.</summary>
internal sealed class LureSigns(Sheet sheet, float x)
{
    /// <summary>The room that hooks take below a lure's end.</summary>
    public const float Tail = 46;

    private const float HookWidth = 4.5f;
    private const float Small = 0.75f;

    /// <summary>Draws it.</summary>
    /// <param name="kind">What it is.</param>
    /// <param name="top">Where its nose is.</param>
    /// <param name="length">How long it is, in pixels.</param>
    /// <param name="hooks">The colour of its hooks.</param>
    public void Draw(PartKind kind, float top, float length, Ink hooks)
    {
        switch (kind)
        {
            case PartKind.Jig:
                sheet.Add(new ShapeMark(Signs.JigHook, x, top, length, hooks) { Outline = 5 });
                Fill(Signs.Jig, top, length);
                Dot(0, 0.12f, 0.04f, top, length);
                break;
            case PartKind.Spoon:
                Treble(x, top + length + 16, hooks);
                Fill(Signs.Spoon, top, length);
                Dot(0, 0.09f, 0.025f, top, length);
                break;
            case PartKind.Swimmer:
                Treble(x - (0.13f * length), top + (0.5f * length) + 14, hooks);
                Treble(x, top + length + 14, hooks);
                Fill(Signs.Swimmer, top, length);
                Dot(0.05f, 0.13f, 0.028f, top, length);
                break;
            default:
                Treble(x + (0.09f * length), top + (0.26f * length) + 14, hooks, Small);
                Treble(x + (0.07f * length), top + (0.58f * length) + 14, hooks, Small);
                Fill(Signs.DeadFish, top, length);
                Dot(-0.045f, 0.1f, 0.02f, top, length);
                break;
        }
    }

    private void Fill(string path, float top, float length) => sheet.Add(new ShapeMark(path, x, top, length, Ink.Tackle));

    private void Treble(float at, float y, Ink ink, float scale = 0.9f) => sheet.Add(new ShapeMark(Signs.Treble, at, y, scale, ink) { Outline = HookWidth });

    private void Dot(float across, float down, float radius, float top, float length)
    {
        var (middle, y, size) = (x + (across * length), top + (down * length), Math.Max(2.5f, radius * length));
        sheet.Add(new FillMark(new Box(middle - size, y - size, middle + size, y + size), size, Ink.Paper));
    }
}
