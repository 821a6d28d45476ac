using CrewBot.Core.Pictures;
using CrewBot.Drawing.Charts;
using CrewBot.Drawing.Fonts;
using CrewBot.Drawing.Inks;
using CrewBot.Drawing.Sheets;
using CsCheck;
using SkiaSharp;

namespace CrewBot.Drawing.Tests;

public sealed class SheetTests(PlayedCrew crew)
{
    private static readonly DateTimeOffset Start = new(2027, 1, 16, 7, 0, 0, TimeSpan.Zero);
    private static readonly TimeAxis Day = new(Start, Start.AddHours(8), [.. Enumerable.Range(0, 9).Select(hour => new TimeTick(Start.AddHours(hour), $"{7 + hour}:00"))]);

    private static readonly Gen<string> Word = Gen.OneOf(
        Gen.String[Gen.Char.AlphaNumeric, 1, 30],
        Gen.Int[0, 5].Select(at => new[] { "Ågot", "Zoë-Maë Öström", "Łukasz", "Ольга", "明", "🎣 Ida" }[at]));

    private static readonly Gen<PictureData> AnyRace =
        from racers in (
            from name in Word
            from points in Gen.Select(Gen.Double[0, 8], Gen.Double[0, 200]).Array[0, 8]
            select new Racer(name, "48.25 in", [.. points.OrderBy(point => point.Item1).Select(point => new RacePoint(Start.AddHours(point.Item1), point.Item2))])).Array[0, 9]
        select (PictureData)new RacePicture("A race.", "Race", "points", racers, Day);

    private static readonly Gen<PictureData> AnySeating =
        from shelters in (
            from name in Word
            from people in Word.Array[0, 9]
            from free in Gen.Int[0, 4]
            select new PicturedShelter(name, people.Length + free, people)).Array[1, 6]
        select (PictureData)new SeatingPicture("Seats.", "Seats", shelters);

    private static readonly Gen<PictureData> AnyIntervals =
        from rows in (
            from name in Word
            from low in Gen.Double[0, 2]
            from more in Gen.Double[0.01, 3]
            from most in Gen.Double[0.01, 40]
            select new PicturedInterval(name, "1.4 a line-hour", low, low + more, low + more + most)).Array[1, 6]
        select (PictureData)new IntervalPicture("Rates.", "Rates", "fish a line-hour", rows);

    private static readonly Gen<PictureData> AnyIce =
        from spots in (
            from name in Word
            from isBad in Gen.Bool
            from reports in Gen.Select(Gen.Double[0, 8], Gen.Double[0, 0.6], Gen.Enum<IceSign>(), Gen.Bool).Array[0, 9]
            select new IceSpot(name, "latest", [.. reports.Select(report => new ReportedIce(Start.AddHours(report.Item1), UnitsNet.Length.FromMeters(report.Item2), report.Item3) { IsOld = report.Item4 })])
            {
                IsBad = isBad,
            }).Array[1, 4]
        from beyond in Word
        from required in Gen.Double[0.05, 0.5].Array[0, 5]
        select (PictureData)new IceBoardPicture(
            "Ice.", "Ice", spots, [.. required.Order().Select(rule => new RequiredIce(UnitsNet.Length.FromMeters(rule), "on foot, 4 in"))], Day, "Ask locally.")
        {
            Reading = "Bars are ice.",
            Beyond = beyond,
            Sources = "From tables.",
        };

    public static TheoryData<string> SampleNames => [.. Samples.All.Select(sample => sample.GetType().Name)];

    [Theory]
    [MemberData(nameof(SampleNames))]
    public void LayOut_Sample_IsLegibleInsideAndApart(string name)
    {
        var sample = Samples.All.Single(sample => sample.GetType().Name == name);

        Assert.Empty(SheetChecks.FaultsOf(Illustrator.LayOut(sample)));
        Assert.NotEmpty(sample.AlternativeText);
        Assert.Equal(Illustrator.LayOut(sample).Texts, Illustrator.LayOut(sample).Texts);
    }

    [Theory]
    [InlineData("derby-race")]
    [InlineData("learning")]
    [InlineData("seating")]
    [InlineData("pocket-card")]
    public void LayOut_WhatCommandsPutTogether_IsLegibleInsideAndApart(string name)
    {
        var picture = crew.Pictures[name];

        Assert.Empty(SheetChecks.FaultsOf(Illustrator.LayOut(picture)));
        Assert.NotEmpty(picture.AlternativeText);
        Assert.Equal(Illustrator.LayOut(picture).Texts, Illustrator.LayOut(picture).Texts);
    }

    [Fact]
    public void Race_FishWaitAndTheDayIsNotClosed_SaysSo() =>
        Assert.Matches("\\. Fished; word of fish until .*\\. 1 entry waits for a word or a ruling\\.$", ((RacePicture)crew.Pictures["derby-race"]).Unit);

    [Fact]
    public void LayOut_AnyChart_NoLabelOverlapsOrLeavesThePicture() =>
        Gen.OneOf(AnyRace, AnySeating, AnyIntervals, AnyIce).Sample(
            picture => Assert.Empty(SheetChecks.FaultsOf(Illustrator.LayOut(picture))),
            iter: 500);

    [Fact]
    public void LayOut_RequiredIce_IsDrawnToTheScaleOfTheReports()
    {
        var strokes = Illustrator.LayOut(Samples.Ice).Marks.OfType<StrokeMark>().Where(mark => mark.Dashes is not null).Take(3).ToList();
        var surface = Illustrator.LayOut(Samples.Ice).Marks.OfType<StrokeMark>().First(mark => mark.Width == 4).Points[0].Y;

        // 4, 6 and 10 in under the surface.
        var down = strokes.Select(stroke => stroke.Points[0].Y - surface).ToList();
        Assert.Equal(6.0 / 4, down[1] / down[0], 3);
        Assert.Equal(10.0 / 4, down[2] / down[0], 3);
    }

    [Fact]
    public void Place_LettersThatTheFamilyLacks_BecomeQuestionMarksNotBoxes()
    {
        var sheet = Illustrator.LayOut(new SeatingPicture("Seats.", "Seats", [new PicturedShelter("Hub", 1, ["明 Ida"])]));

        Assert.Contains(sheet.Texts, text => text.Text == "? Ida");
        Assert.All(sheet.Texts, text => Assert.True(Lettering.CanWrite(text.Text)));
    }

    /// <summary>What an independent decoder reads back is what was painted, edges smoothed to a few steps.</summary>
    [Fact]
    public void Draw_Picture_DecodesToTheColoursOfItsTheme()
    {
        using var decoded = SKBitmap.Decode(Illustrator.Draw(Samples.Seats, Theme.Dark));

        Assert.Equal((int)Sheet.Width, decoded.Width);
        Assert.Equal(Theme.Dark[Ink.Paper], decoded.GetPixel(0, 0));
        Assert.Contains(decoded.Pixels, pixel => pixel == Theme.Dark[Ink.Water]);
        Assert.Contains(decoded.Pixels, pixel => pixel == Theme.Dark[Ink.Tackle]);
    }

    [Fact]
    public void Tops_LabelsThatCrowd_AreMovedApartAndKeptInside()
    {
        var tops = Spread.Tops([0, 10, 12, 200], height: 30, from: 0, to: 130);

        Assert.Equal([0, 30, 60, 100], tops);
    }

    [Theory]
    [InlineData(71.25, 5, 20)]
    [InlineData(1.8, 5, 0.5)]
    [InlineData(0.031, 5, 0.01)]
    public void For_AnyRange_StepsByOneTwoOrFive(double most, int count, double step) => Assert.Equal(step, Steps.For(most, count), 9);
}
