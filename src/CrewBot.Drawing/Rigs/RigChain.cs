using System.Globalization;
using CrewBot.Core.Pictures;
using CrewBot.Drawing.Fonts;
using CrewBot.Drawing.Inks;
using CrewBot.Drawing.Sheets;
using UnitsNet;

namespace CrewBot.Drawing.Rigs;

/// <summary>Lays out one rig as a chain of signs, each with its label to the right; leaders and lures as long as they are.</summary>
internal sealed class RigChain(Sheet sheet, LureScale lures, LeaderScale leaders, float left, float width)
{
    /// <summary>Where the line is, from the left edge.</summary>
    public const float LineX = 82;

    private const float LabelX = 126;
    private const float RulerX = 4;
    private const float RowGap = 20;
    private const float ShortestRow = 60;
    private const float MarkLabelX = 20;
    private const float MarkHeight = Sheet.SmallText * Lettering.LineHeight;
    private const float OverLure = 40; // the ruler's label stands there

    private readonly float _x = left + LineX;
    private readonly float _labelLeft = left + LabelX;
    private readonly float _labelWidth = width - LabelX;
    private readonly LureSigns _lureSigns = new(sheet, left + LineX);

    /// <summary>The height of a row with so many lines of text.</summary>
    public static float RowOf(int lines) => (lines * Sheet.SmallText * Lettering.LineHeight) + RowGap;

    /// <summary>Draws it.</summary>
    /// <returns>Where it ends.</returns>
    public float Draw(PicturedRig rig, float top)
    {
        if (rig.Job is { } job)
        {
            top = sheet.Write(job, left, top, width, Sheet.PlainText, Weight.SemiBold, Ink.Accent) + 8;
        }

        PicturedPart? above = null;
        foreach (var part in rig.Parts)
        {
            top = Row(part, above, top);
            above = part;
        }

        return top;
    }

    private float Row(PicturedPart part, PicturedPart? above, float top)
    {
        var labels = Lettering.Wrap(part.Label, Sheet.SmallText, Weight.Regular, _labelWidth).Count;
        var warnings = part.Weakest is { } weakest ? Lettering.Wrap(Warning(weakest), Sheet.SmallText, Weight.SemiBold, _labelWidth).Count : 0;
        var height = Math.Max(RowOf(labels + warnings), RowHeight(part));
        var middle = top + (height / 2);

        Sign(part, above, top, height);
        var below = sheet.Write(part.Label, _labelLeft, middle - ((RowOf(labels + warnings) - RowGap) / 2), _labelWidth, Sheet.SmallText);
        if (part.Weakest is { } pull)
        {
            sheet.Write(Warning(pull), _labelLeft, below, _labelWidth, Sheet.SmallText, Weight.SemiBold, Ink.Warning);
            sheet.Add(new ShapeMark(Signs.Pointer, _x - (LureScale.IsLure(part.Kind) ? 36 : 22), middle, 1, Ink.Warning));
        }

        return top + height;
    }

    private static string Warning(string pull) => $"weakest: {pull}";

    private float RowHeight(PicturedPart part) => part switch
    {
        { Kind: var kind, Length: { } length } when LureScale.IsLure(kind) => OverLure + lures.Pixels(length) + LureSigns.Tail,
        { Length: { } length } when LeaderScale.IsLeader(part) => leaders.Pixels(length),
        _ => ShortestRow,
    };

    private void Sign(PicturedPart part, PicturedPart? above, float top, float height)
    {
        var middle = top + (height / 2);
        var ink = part.Weakest is null ? Ink.Tackle : Ink.Warning;
        switch (part.Kind)
        {
            case PartKind.Braid or PartKind.Strand or PartKind.Wire:
                Line(part.Kind, top, top + height);
                if (LeaderScale.IsLeader(part))
                {
                    Bracket(middle, part.Length!.Value);
                }

                break;
            case PartKind.Rod:
                sheet.Add(new ShapeMark(Signs.Reel, _x, middle, 1, ink) { Outline = 4 });
                sheet.Stroke(_x, middle + 18, _x, top + height, 3, Ink.Tackle);
                break;
            case PartKind.Bait:
                sheet.Add(new ShapeMark(Signs.Bait, _x, middle, 1, ink) { Outline = 3.5f });
                break;
            case var kind when LureScale.IsLure(kind):
                Lure(part, top, ink);
                break;
            default:
                // The line goes on behind a small part as it came.
                Line(above?.Kind ?? PartKind.Strand, top, part.Kind is PartKind.Hook or PartKind.Treble ? middle - 24 : top + height);
                Small(part.Kind, middle, ink);
                break;
        }
    }

    private void Small(PartKind kind, float middle, Ink ink)
    {
        var (path, outline) = kind switch
        {
            PartKind.Knot => (Signs.Knot, (float?)null),
            PartKind.Shot => (Signs.Shot, null),
            PartKind.Sinker => (Signs.Sinker, null),
            PartKind.Swivel => (Signs.Swivel, 4),
            PartKind.Snap => (Signs.Snap, 4),
            PartKind.SplitRing => (Signs.SplitRing, 3),
            PartKind.Hook => (Signs.Hook, 5),
            PartKind.Treble => (Signs.Treble, 5),
            _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "This part has no small sign."),
        };
        if (outline is null)
        {
            // A rim of paper sets it off from the line.
            sheet.Add(new ShapeMark(path, _x, middle, 1, Ink.Paper) { Outline = 7 });
        }

        sheet.Add(new ShapeMark(path, _x, middle, 1, ink) { Outline = outline });
    }

    private void Line(PartKind kind, float from, float to)
    {
        switch (kind)
        {
            case PartKind.Braid:
                sheet.Stroke(_x, from, _x, to, 9, Ink.Tackle);
                sheet.Stroke(_x, from + 2, _x, to - 2, 2.5f, Ink.Paper, (5, 8)); // its weave
                break;
            case PartKind.Wire:
                sheet.Stroke(_x, from, _x, to, 5, Ink.Tackle, (12, 9));
                break;
            default:
                sheet.Stroke(_x, from, _x, to, 3.5f, Ink.Tackle);
                break;
        }
    }

    private void Lure(PicturedPart part, float top, Ink ink)
    {
        var start = top + OverLure;
        sheet.Stroke(_x, top, _x, start + 2, 3.5f, Ink.Tackle);
        _lureSigns.Draw(part.Kind, start, lures.Pixels(part.Length!.Value), ink);
        Ruler(start, part.Length!.Value);
    }

    private void Ruler(float start, Length length)
    {
        var units = lures.UnitsFor(length);
        var (x, end) = (left + RulerX, start + (units * lures.UnitPixels));
        sheet.Stroke(x, start, x, end, 2.5f, Ink.Quiet);
        // So many ticks that they can be told apart.
        var every = Math.Max(1, (int)Math.Ceiling(9 / lures.UnitPixels));
        for (var unit = 0; unit <= units; unit += every)
        {
            var y = start + (unit * lures.UnitPixels);
            sheet.Stroke(x, y, x + (unit == 0 || unit == units ? 14 : 8), y, 2.5f, Ink.Quiet);
        }

        sheet.Write($"{units} {lures.UnitName}", left, start - OverLure + 1, LineX - 6, Sheet.SmallText, Weight.Regular, Ink.Quiet);
    }

    // Its unit stands where zero is, and a number at every mark that has room for one.
    private void Bracket(float middle, Length length)
    {
        var pixels = leaders.Pixels(length);
        var (x, from, to) = (left + RulerX, middle - (pixels / 2), middle + (pixels / 2));
        sheet.Stroke(x, from, x, to, 2.5f, Ink.Quiet);
        Mark(from, 14, leaders.UnitName);
        Mark(to, 14, Number(pixels));
        var lettered = from;
        for (var y = from + leaders.StepPixels; y < to - 3; y += leaders.StepPixels)
        {
            var hasRoom = Math.Min(y - lettered, to - y) >= MarkHeight;
            lettered = hasRoom ? y : lettered;
            Mark(y, 8, hasRoom ? Number(y - from) : null);
        }

        void Mark(float y, float wide, string? label)
        {
            sheet.Stroke(x, y, x + wide, y, 2.5f, Ink.Quiet);
            if (label is not null)
            {
                sheet.Write(label, x + MarkLabelX, y - (MarkHeight / 2), LineX - RulerX - MarkLabelX, Sheet.SmallText, Weight.Regular, Ink.Quiet);
            }
        }

        string Number(float down) => leaders.NumberAt(down).ToString(CultureInfo.InvariantCulture);
    }
}
