using CrewBot.Core.Pictures;
using CrewBot.Drawing.Fonts;
using CrewBot.Drawing.Inks;
using CrewBot.Drawing.Sheets;

namespace CrewBot.Drawing.Rigs;

/// <summary>Lays out one rig as a chain of signs, each with its label to the right.</summary>
internal sealed class RigChain(Sheet sheet, LureScale scale, float left, float width)
{
    private const float LineX = 66;
    private const float LabelX = 110;
    private const float RowGap = 18;
    private const float ShortestRow = 58;
    private const float LeastLeader = 96;
    private const float MostLeader = 220;
    private const float LeaderPixelsPerMetre = 190;

    private readonly float _x = left + LineX;
    private readonly float _labelLeft = left + LabelX;
    private readonly float _labelWidth = width - LabelX;

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
        var lettered = (labels + warnings) * Sheet.SmallText * Lettering.LineHeight;
        var height = Math.Max(lettered + RowGap, RowHeight(part));
        var middle = top + (height / 2);

        Sign(part, above, top, height);
        var below = sheet.Write(part.Label, _labelLeft, middle - (lettered / 2), _labelWidth, Sheet.SmallText);
        if (part.Weakest is { } pull)
        {
            sheet.Write(Warning(pull), _labelLeft, below, _labelWidth, Sheet.SmallText, Weight.SemiBold, Ink.Warning);
            sheet.Add(new ShapeMark(Signs.Crack, _x, middle, 1.15f, Ink.Warning) { Outline = 6 });
        }

        return top + height;
    }

    private static string Warning(string pull) => $"weakest: {pull}";

    private float RowHeight(PicturedPart part) => part switch
    {
        { Kind: var kind, Length: { } length } when LureScale.IsLure(kind) => scale.Pixels(length) + Sheet.SmallText + 44,
        { Kind: PartKind.Braid or PartKind.Strand or PartKind.Wire, Length: { } length } =>
            Math.Clamp((float)length.Meters * LeaderPixelsPerMetre, LeastLeader, MostLeader),
        _ => ShortestRow,
    };

    private void Sign(PicturedPart part, PicturedPart? above, float top, float height)
    {
        var middle = top + (height / 2);
        switch (part.Kind)
        {
            case PartKind.Braid or PartKind.Strand or PartKind.Wire:
                Line(part.Kind, top, top + height);
                break;
            case PartKind.Rod:
                Sign(Signs.Reel, middle, outline: 4);
                sheet.Stroke(_x, middle + 18, _x, top + height, 3, Ink.Tackle);
                break;
            case PartKind.Bait:
                Sign(Signs.Bait, middle, outline: 3);
                break;
            case var kind when LureScale.IsLure(kind):
                Lure(part, top);
                break;
            default:
                // The line goes on behind a small part as it came.
                Line(above?.Kind ?? PartKind.Strand, top, part.Kind is PartKind.Hook or PartKind.Treble ? middle - 20 : top + height);
                Small(part.Kind, middle);
                break;
        }
    }

    private void Small(PartKind kind, float middle)
    {
        switch (kind)
        {
            case PartKind.Knot:
                Sign(Signs.Knot, middle);
                break;
            case PartKind.Shot:
                Sign(Signs.Shot, middle);
                break;
            case PartKind.Sinker:
                Sign(Signs.Sinker, middle);
                break;
            case PartKind.Swivel:
                Sign(Signs.Swivel, middle, outline: 4);
                break;
            case PartKind.Snap:
                Sign(Signs.Snap, middle, outline: 4);
                break;
            case PartKind.SplitRing:
                Sign(Signs.SplitRing, middle, outline: 3);
                break;
            case PartKind.Hook:
                Sign(Signs.Hook, middle, outline: 5);
                break;
            case PartKind.Treble:
                Sign(Signs.Treble, middle, outline: 5);
                break;
            default:
                throw new ArgumentOutOfRangeException(nameof(kind), kind, "This part has no small sign.");
        }
    }

    private void Sign(string path, float y, float? outline = null) =>
        sheet.Add(new ShapeMark(path, _x, y, 1, Ink.Tackle) { Outline = outline });

    private void Line(PartKind kind, float from, float to)
    {
        var (thickness, dashes) = kind switch
        {
            PartKind.Braid => (8f, ((float, float)?)null),
            PartKind.Wire => (5f, (12f, 9f)),
            _ => (3.5f, null),
        };
        sheet.Stroke(_x, from, _x, to, thickness, Ink.Tackle, dashes);
    }

    private void Lure(PicturedPart part, float top)
    {
        var length = scale.Pixels(part.Length!.Value);
        var start = top + 14;
        sheet.Stroke(_x, top, _x, start, 3.5f, Ink.Tackle);
        sheet.Add(new ShapeMark(ShapeOf(part.Kind), _x, start, length, Ink.Tackle));
        Ruler(start, part.Length!.Value);
    }

    private static string ShapeOf(PartKind kind) => kind switch
    {
        PartKind.Jig => Signs.Jig,
        PartKind.Spoon => Signs.Spoon,
        PartKind.Swimmer => Signs.Swimmer,
        _ => Signs.DeadFish,
    };

    private void Ruler(float start, UnitsNet.Length length)
    {
        const float TickX = 4;
        var units = scale.UnitsFor(length);
        var (x, end) = (left + TickX, start + (units * scale.UnitPixels));
        sheet.Stroke(x, start, x, end, 2.5f, Ink.Quiet);
        // So many ticks that they can be told apart.
        var every = Math.Max(1, (int)Math.Ceiling(9 / scale.UnitPixels));
        for (var unit = 0; unit <= units; unit += every)
        {
            var y = start + (unit * scale.UnitPixels);
            sheet.Stroke(x, y, x + (unit == 0 || unit == units ? 14 : 8), y, 2.5f, Ink.Quiet);
        }

        sheet.Write($"{units} {scale.UnitName}", left, end + 4, LabelX, Sheet.SmallText, Weight.Regular, Ink.Quiet);
    }
}
