using CrewBot.Core.Pictures;
using CrewBot.Drawing.Charts;
using CrewBot.Drawing.Fonts;
using CrewBot.Drawing.Inks;
using CrewBot.Drawing.Sheets;
using UnitsNet;

namespace CrewBot.Drawing.Ice;

/// <summary>Lays out reports of ice: a panel a spot, the ice hanging from the surface as it does, to one scale for all.</summary>
internal static class IceBoardSheet
{
    private const float PanelHeight = 190;
    private const float BarelessHeight = 50;
    private const float LabelWidth = 252;
    private const float LabelGap = 12;
    private const float BarWidth = 18;
    private const float Across = Sheet.Width - (2 * Sheet.Margin);
    private const float Line = Sheet.SmallText * Lettering.LineHeight;

    public static Sheet LayOut(IceBoardPicture picture)
    {
        var sheet = new Sheet();
        var top = sheet.Write(picture.Reading, Sheet.Margin, sheet.Title(picture.Title) - 8, Across, Sheet.SmallText, ink: Ink.Quiet) + 16;
        var time = new TimeScale(picture.Time, Sheet.Margin + BarWidth, Sheet.Width - Sheet.Margin - LabelWidth - LabelGap - BarWidth);
        var thickest = picture.Spots.SelectMany(spot => spot.Reports).Select(report => report.Thickness.Meters)
            .Concat(picture.Required.Select(required => required.Thickness.Meters)).DefaultIfEmpty(0.1).Max() * 1.1;
        foreach (var spot in picture.Spots)
        {
            top = Spot(sheet, spot, picture.Required, time, thickest, top) + 20;
        }

        top = sheet.Write(picture.Beyond, Sheet.Margin, top, Across, Sheet.SmallText) + 10;
        top = Legend(sheet, picture, top) + 18;
        top = Cautions.Draw(sheet, picture.Caution, top) + 12;
        sheet.Height = sheet.Write(picture.Sources, Sheet.Margin, top, Across, Sheet.SmallText, ink: Ink.Quiet) + Sheet.Margin;
        return sheet;
    }

    private static float Spot(Sheet sheet, IceSpot spot, IReadOnlyList<RequiredIce> required, TimeScale time, double thickest, float top)
    {
        top = sheet.Write(spot.Name, Sheet.Margin, top, Across, Sheet.PlainText, Weight.SemiBold);
        var surface = Latest(sheet, spot, top) + 18;
        if (spot.Reports.Count == 0)
        {
            return surface;
        }

        var hasBars = spot.Reports.Any(report => report.Thickness > Length.Zero);
        var bottom = surface + (hasBars ? PanelHeight : BarelessHeight);
        float Y(double thickness) => surface + ((float)(thickness / thickest) * PanelHeight);

        var (left, right) = (time.Left - BarWidth, time.Right + BarWidth);
        sheet.Add(new FillMark(new Box(left, surface, right, bottom), 0, Ink.Water));
        sheet.Stroke(left, surface, right, surface, 4, Ink.Tackle);
        foreach (var report in spot.Reports)
        {
            var x = time.At(report.At);
            sheet.Add(new FillMark(new Box(x - (BarWidth / 2), surface, x + (BarWidth / 2), Y(report.Thickness.Meters)), 0, Ink.Ice));
        }

        // Where there is bad news a number to compare with is only a temptation.
        if (hasBars && !spot.IsBad)
        {
            Lines(sheet, required, left, right, surface, bottom, Y);
        }

        foreach (var report in spot.Reports)
        {
            Sign(sheet, report.Sign, report.IsOld, time.At(report.At), Y(report.Thickness.Meters));
        }

        return time.Draw(sheet, bottom, bottom);
    }

    private static float Latest(Sheet sheet, IceSpot spot, float top) => spot.IsBad
        ? Cautions.Draw(sheet, spot.Latest, top)
        : sheet.Write(spot.Latest, Sheet.Margin, top, Across, Sheet.SmallText);

    private static void Lines(
        Sheet sheet, IReadOnlyList<RequiredIce> required, float left, float right, float surface, float bottom, Func<double, float> y)
    {
        var ends = required.Select(rule => y(rule.Thickness.Meters)).ToList();
        var tops = Spread.Tops([.. ends.Select(end => end - (Line / 2))], Line, surface - (Line / 2), bottom + (Line / 2));
        for (var index = 0; index < required.Count; index++)
        {
            sheet.Stroke(left, ends[index], right, ends[index], 2.5f, Ink.Text, (9, 7));
            sheet.Stroke(right, ends[index], right + LabelGap, tops[index] + (Line / 2), 1.5f, Ink.Quiet);
            var label = Lettering.OneLine(required[index].Label, Sheet.SmallText, Weight.Regular, LabelWidth - 6);
            sheet.Write(label, right + LabelGap + 6, tops[index], LabelWidth, Sheet.SmallText);
        }
    }

    private static float Legend(Sheet sheet, IceBoardPicture picture, float top)
    {
        var reports = picture.Spots.SelectMany(spot => spot.Reports).ToList();
        var entries = reports.Select(report => report.Sign).Distinct().Order().Select(sign => (sign, IsOld: false, Name: NameOf(sign))).ToList();
        if (reports.Any(report => report.IsOld))
        {
            entries.Add((reports.Where(report => report.IsOld).Min(report => report.Sign), IsOld: true, "hollow: older than 24 h, void"));
        }

        var x = Sheet.Margin;
        foreach (var (sign, isOld, name) in entries)
        {
            var width = Lettering.Width(name, Sheet.SmallText, Weight.Regular) + 60;
            if (x > Sheet.Margin && x + width > Sheet.Width - Sheet.Margin)
            {
                (x, top) = (Sheet.Margin, top + Line);
            }

            Sign(sheet, sign, isOld, x + 12, top + (Line / 2));
            sheet.Write(name, x + 32, top, Sheet.Width, Sheet.SmallText);
            x += width;
        }

        return top + Line;
    }

    private static string NameOf(IceSign sign) => sign switch
    {
        IceSign.Clear => "clear",
        IceSign.White => "white",
        IceSign.Unsound => "unsound or open",
        _ => "kind not said",
    };

    private static void Sign(Sheet sheet, IceSign sign, bool isOld, float x, float y)
    {
        var (path, ink) = sign switch
        {
            IceSign.Clear => (Markers.Disc, Ink.Accent),
            IceSign.White => (Markers.Square, Ink.Accent),
            IceSign.Unsound => (Markers.Cross, Ink.Warning),
            _ => (Markers.Triangle, Ink.Tackle),
        };
        sheet.Add(new ShapeMark(path, x, y, 1.1f, Ink.Paper) { Outline = 6 });
        sheet.Add(new ShapeMark(path, x, y, 1.1f, isOld ? Ink.Paper : ink));
        if (isOld)
        {
            sheet.Add(new ShapeMark(path, x, y, 1.1f, ink) { Outline = 3.5f });
        }
    }
}
