using System.Globalization;
using CrewBot.Core.Pictures;
using CrewBot.Drawing.Fonts;
using CrewBot.Drawing.Inks;
using CrewBot.Drawing.Sheets;

namespace CrewBot.Drawing.Charts;

/// <summary>Lays out a race: one stepped line a competitor, named where it ends.</summary>
internal static class RaceSheet
{
    private const float PlotHeight = 520;
    private const float NameWidth = 224;
    private const float ScaleWidth = 62;
    private const float NameGap = 30;
    private const float LabelHeight = (2 * Sheet.SmallText * Lettering.LineHeight) + 8;
    private const int MostGridLines = 5;

    public static Sheet LayOut(RacePicture picture)
    {
        var sheet = new Sheet();
        var top = sheet.Title(picture.Title);
        top = sheet.Write(picture.Unit, Sheet.Margin, top - 8, Sheet.Width - (2 * Sheet.Margin), Sheet.SmallText, ink: Ink.Quiet) + 28;
        var racers = picture.Racers.Take(Markers.ByPlace.Count).ToList();
        var time = new TimeScale(picture.Time, Sheet.Margin + ScaleWidth, Sheet.Width - Sheet.Margin - NameWidth - NameGap);
        var bottom = top + PlotHeight;
        var grid = Steps.Through(racers.SelectMany(racer => racer.Points).Select(point => point.Total).DefaultIfEmpty(1).Max(), MostGridLines);
        float Y(double total) => bottom - ((float)(total / grid[^1]) * PlotHeight);

        foreach (var value in grid)
        {
            sheet.Stroke(time.Left, Y(value), time.Right, Y(value), value == 0 ? 2.5f : 1.5f, value == 0 ? Ink.Quiet : Ink.Rule);
            var label = value.ToString("0.##", CultureInfo.InvariantCulture);
            sheet.WriteRight(label, time.Left - 10, Y(value) - (Sheet.SmallText * Lettering.LineHeight / 2), ScaleWidth - 10, Sheet.SmallText, ink: Ink.Quiet);
        }

        var end = time.Draw(sheet, bottom, bottom);
        // The leader last: what matters most lies on top.
        for (var place = racers.Count - 1; place >= 0; place--)
        {
            Line(sheet, racers[place], place, time, Y);
        }

        Names(sheet, racers, time.Right, Y, top, bottom);
        sheet.Height = end + Sheet.Margin;
        return sheet;
    }

    private static void Line(Sheet sheet, Racer racer, int place, TimeScale time, Func<double, float> y)
    {
        var points = new List<(float X, float Y)> { (time.Left, y(0)) };
        foreach (var point in racer.Points)
        {
            points.Add((time.At(point.At), points[^1].Y));
            points.Add((time.At(point.At), y(point.Total)));
        }

        points.Add((time.Right, points[^1].Y));
        sheet.Add(new StrokeMark(points, place == 0 ? 6 : 3, InkOf(place)));
        foreach (var point in racer.Points)
        {
            Sign(sheet, place, time.At(point.At), y(point.Total));
        }
    }

    private static void Names(Sheet sheet, List<Racer> racers, float right, Func<double, float> y, float top, float bottom)
    {
        var ends = racers.Select(racer => y(racer.Points.Count > 0 ? racer.Points[^1].Total : 0)).ToList();
        var tops = Spread.Tops([.. ends.Select(end => end - (LabelHeight / 2))], LabelHeight, top - 8, bottom + 8);
        for (var place = 0; place < racers.Count; place++)
        {
            var x = right + NameGap;
            var middle = tops[place] + (Sheet.SmallText * Lettering.LineHeight / 2);
            sheet.Stroke(right, ends[place], x - 4, middle, 1.5f, Ink.Quiet);
            Sign(sheet, place, x + 10, middle);
            var (left, width) = (x + 30, Sheet.Width - Sheet.Margin - x - 30);
            var weight = place == 0 ? Weight.SemiBold : Weight.Regular;
            sheet.WriteRight(racers[place].Name, left + Math.Min(width, Lettering.Width(racers[place].Name, Sheet.SmallText, weight)), tops[place], width, Sheet.SmallText, weight);
            sheet.WriteRight(racers[place].Total, left + Math.Min(width, Lettering.Width(racers[place].Total, Sheet.SmallText, Weight.Regular)), tops[place] + (Sheet.SmallText * Lettering.LineHeight), width, Sheet.SmallText, ink: Ink.Quiet);
        }
    }

    private static void Sign(Sheet sheet, int place, float x, float y)
    {
        sheet.Add(new ShapeMark(Markers.ByPlace[place], x, y, 1, Ink.Paper) { Outline = 5 });
        sheet.Add(new ShapeMark(Markers.ByPlace[place], x, y, 1, InkOf(place)));
    }

    private static Ink InkOf(int place) => place == 0 ? Ink.Accent : Ink.Tackle;
}
