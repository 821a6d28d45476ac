using CrewBot.Core.Ice;
using CrewBot.Core.Tests.Published;
using CsCheck;
using UnitsNet;

namespace CrewBot.Core.Tests.Ice;

public sealed class CombinedReportsTests
{
    [Theory]
    [PublishedRows("combined_effective_thickness")]
    public void At_ReportsInTable_IsTheMinimumOfEffectiveThicknesses(PublishedRow row)
    {
        var standing = Lakes.At([.. row.Inputs["reports"].Split(" / ").Select(Parse)]);

        if (row.Expected == "STAY OFF")
        {
            Assert.Null(standing.Least);
            Assert.NotEmpty(standing.Blocking);
            return;
        }

        row.Check(standing.Least!.Value.Inches);
    }

    [Fact]
    public void At_OneMoreReport_NeverRaisesTheFigure() =>
        Gen.Select(Lakes.AnyReport.Array[0, 6], Lakes.AnyReport).Sample((reports, more) =>
        {
            var (before, after) = (Lakes.At(reports), Lakes.At([.. reports, more]));

            return before.Least is not { } least
                ? before.Blocking.Count == 0 || after.Least is null
                : after.Least is not { } now || now <= least;
        });

    [Fact]
    public void At_OneMoreHazard_NeverLowersTheCaution() =>
        Gen.Select(Lakes.AnyReport.Array[1, 5], Lakes.AnyHazard).Sample((reports, hazard) =>
        {
            var worse = reports.ToArray();
            worse[0] = worse[0] with { Hazards = [.. worse[0].Hazards, hazard] };
            var (before, after) = (Lakes.At(reports), Lakes.At(worse));

            return after.Blocking.Count >= before.Blocking.Count && (before.Least is not null || after.Least is null);
        });

    [Fact]
    public void At_AnotherSpot_SupportsNothing() =>
        Assert.Null(Lakes.At(Lakes.Report("south bay", 1, Lakes.Inches(IceKind.Clear, 20))).Least);

    [Fact]
    public void At_NobodySaysWhere_SupportsNothing() =>
        Assert.Null(Lakes.At(Lakes.Report(null, 1, Lakes.Inches(IceKind.Clear, 20))).Least);

    [Theory]
    [InlineData(24, true)]
    [InlineData(24.01, false)]
    [InlineData(-1, false)] // measured in the future
    public void At_Age_CountsForADay(double hoursAgo, bool supports) =>
        Assert.Equal(supports, Lakes.At(Lakes.Report(Lakes.Landing, hoursAgo, Lakes.Inches(IceKind.Clear, 20))).Least is not null);

    [Fact]
    public void At_Hearsay_SupportsNothing() =>
        Assert.Null(Lakes.At(Lakes.Today(IceKind.Clear, 20) with { IsMeasured = false }).Least);

    [Fact]
    public void At_NobodySaysWhenOrWho_SupportsNothing()
    {
        Assert.Null(Lakes.At(Lakes.Today(IceKind.Clear, 20) with { MeasuredAt = null }).Least);
        Assert.Null(Lakes.At(Lakes.Today(IceKind.Clear, 20) with { MeasuredBy = null }).Least);
    }

    [Fact]
    public void At_TemperatureUnknown_CountsAsThaw()
    {
        var standing = CombinedReports.At([Lakes.Today(IceKind.Clear, 20)], Lakes.Landing, AirSince.Unknown, Lakes.Now);

        Assert.Null(standing.Least);
        Assert.Contains("how warm", standing.Why!.ToString(null), StringComparison.Ordinal);
    }

    [Fact]
    public void At_ThawAtExactlyFreezing_VoidsTheReport() => Assert.Null(CombinedReports.At(
        [Lakes.Today(IceKind.Clear, 20)], Lakes.Landing, new AirSince(Temperature.FromDegreesCelsius(0), null), Lakes.Now).Least);

    [Fact]
    public void At_MeasuredAfterTheThaw_Counts() => Assert.NotNull(CombinedReports.At(
        [Lakes.Today(IceKind.Clear, 20)], Lakes.Landing,
        new AirSince(Temperature.FromDegreesCelsius(3), Lakes.Now.AddHours(-5)), Lakes.Now).Least);

    [Fact]
    public void At_LaterReportOfWarmAir_VoidsTheEarlier()
    {
        var warm = Lakes.Report("south bay", 0.5, Lakes.Inches(IceKind.Clear, 20)) with { Air = Temperature.FromDegreesCelsius(1) };

        Assert.Null(Lakes.At(Lakes.Today(IceKind.Clear, 20), warm).Least);
    }

    [Theory]
    [InlineData(IceHazard.BrokeThrough)]
    [InlineData(IceHazard.OpenWater)]
    [InlineData(IceHazard.Thin)]
    [InlineData(IceHazard.WetCrack)]
    public void At_OldBadNews_BlocksItsPlaceAllSeason(IceHazard hazard)
    {
        var bad = Lakes.Report("off the north landing", 24 * 40) with { Hazards = [hazard] };
        var standing = Lakes.At(bad, Lakes.Today(IceKind.Clear, 20));

        Assert.Equal([bad], standing.Blocking);
        Assert.Null(standing.Least);
        Assert.NotNull(Lakes.At(bad with { Closed = true }, Lakes.Today(IceKind.Clear, 20)).Least);
        Assert.NotNull(Lakes.At(bad with { Spot = "south bay" }, Lakes.Today(IceKind.Clear, 20)).Least);
    }

    [Fact]
    public void At_BadNewsWithoutAPlace_BlocksEverywhere() =>
        Assert.Null(Lakes.At(Lakes.Report(null, 200) with { Hazards = [IceHazard.OpenWater] }, Lakes.Today(IceKind.Clear, 20)).Least);

    [Fact]
    public void At_WeakIceElsewhereToday_BlocksTheWholeWater()
    {
        var weak = Lakes.Report("south bay", 2, Lakes.Inches(IceKind.Candled, 20));

        Assert.Null(Lakes.At(weak, Lakes.Today(IceKind.Clear, 20)).Least);
        Assert.NotNull(Lakes.At(Lakes.Report("south bay", 30, Lakes.Inches(IceKind.Candled, 20)), Lakes.Today(IceKind.Clear, 20)).Least);
    }

    [Fact]
    public void At_DryCrack_BlocksNothing() =>
        Assert.NotNull(Lakes.At(Lakes.Today(IceKind.Clear, 20) with { Hazards = [IceHazard.Crack] }).Least);

    [Fact]
    public void Spread_OfSeveralHoles_IsOfIceAsMeasured()
    {
        var spread = Lakes.At(Lakes.Report(Lakes.Landing, 1, Lakes.Inches(IceKind.White, 12), Lakes.Inches(IceKind.Clear, 8))).Spread!.Value;

        Assert.Equal((8, 12), (Math.Round(spread.Least.Inches, 6), Math.Round(spread.Most.Inches, 6)));
    }

    private static IceReport Parse(string text)
    {
        var words = text.Split(' ').Order().ToArray(); // a number and a kind, either first
        return Lakes.Today(Enum.Parse<IceKind>(words[1], ignoreCase: true), double.Parse(words[0], System.Globalization.CultureInfo.InvariantCulture));
    }
}
