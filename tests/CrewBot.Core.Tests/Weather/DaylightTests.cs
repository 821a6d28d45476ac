using System.Globalization;
using CrewBot.Core.Tests.Published;
using CrewBot.Core.Weather;
using UnitsNet;

namespace CrewBot.Core.Tests.Weather;

public sealed class DaylightTests
{
    [Theory]
    [PublishedRows("sunrise")]
    public void Sunrise_PublishedDay_AgreesWithTheAlmanac(PublishedRow row) => Check(row, Of(row).Sun.Up, row.Expected);

    [Theory]
    [PublishedRows("sunset")]
    public void Sunset_PublishedDay_AgreesWithTheAlmanac(PublishedRow row) => Check(row, Of(row).Sun.Down, row.Expected);

    [Theory]
    [PublishedRows("civil_dawn")]
    public void Dawn_PublishedDay_AgreesWithTheAlmanac(PublishedRow row) => Check(row, Of(row).Twilight.Up, row.Expected);

    [Theory]
    [PublishedRows("civil_dusk")]
    public void Dusk_PublishedDay_AgreesWithTheAlmanac(PublishedRow row) => Check(row, Of(row).Twilight.Down, row.Expected);

    [Theory]
    [PublishedRows("sunrise_sunset")]
    public void Sun_PublishedDay_AgreesWithTheAlmanac(PublishedRow row) => Check(row, Of(row).Sun);

    [Theory]
    [PublishedRows("civil_dawn_dusk")]
    public void Twilight_PublishedDay_AgreesWithTheAlmanac(PublishedRow row) => Check(row, Of(row).Twilight);

    [Theory]
    [PublishedRows("dawn_rise_noon_set_dusk")]
    public void Of_WholeDay_AgreesWithTwoEphemerisPrograms(PublishedRow row)
    {
        var day = Of(row);
        DateTimeOffset?[] events = [day.Twilight.Up, day.Sun.Up, day.Noon, day.Sun.Down, day.Twilight.Down];

        foreach (var (shown, expected) in events.Zip(row.Expected.Split(" / ")))
        {
            Check(row, shown, expected);
        }
    }

    [Theory]
    [PublishedRows("solar_declination_deg")]
    public void Declination_PublishedInstant_AgreesWithTheAlmanac(PublishedRow row) => row.Check(SunAt.Of(Instant(row)).Declination);

    [Theory]
    [PublishedRows("equation_of_time_min")]
    public void EquationOfTime_PublishedInstant_AgreesWithTheAlmanac(PublishedRow row) =>
        row.Check(SunAt.Of(Instant(row)).EquationOfTime);

    // Kiritimati keeps the date of the lands west of it: its noon of the 21st is still the 20th at Greenwich.
    [Fact]
    public void Of_FarFromItsZone_StaysOnTheLocalDate()
    {
        var day = Daylight.Of(new DateOnly(2025, 12, 21), Angle.FromDegrees(1.9), Angle.FromDegrees(-157.4), TimeSpan.FromHours(14));

        Assert.Equal(new DateOnly(2025, 12, 21), DateOnly.FromDateTime(day.Noon.DateTime));
        Assert.InRange(day.Noon.Hour, 12, 12);
        Assert.True(day.Sun.Up < day.Noon && day.Noon < day.Sun.Down);
    }

    [Fact]
    public void Of_ImpossibleLatitude_Throws() => Assert.Throws<ArgumentOutOfRangeException>(
        "latitude", () => Daylight.Of(new DateOnly(2026, 1, 1), Angle.FromDegrees(91), Angle.Zero, TimeSpan.Zero));

    private static void Check(PublishedRow row, SunPath path)
    {
        if (row.Expected.StartsWith("none", StringComparison.Ordinal))
        {
            Assert.Null(path.Up);
            Assert.Null(path.Down);
            Assert.Equal(row.Expected.Contains("above", StringComparison.Ordinal), path.AboveAtNoon);
            return;
        }

        var ends = row.Expected.Split(" / ");
        Check(row, path.Up, ends[0]);
        Check(row, path.Down, ends[1]);
    }

    // Almanacs round to the minute, and others cut it off: as many minutes again on top of the row's own.
    private static void Check(PublishedRow row, DateTimeOffset? shown, string expected)
    {
        var allowed = double.Parse(row.Tolerance[4..], CultureInfo.InvariantCulture) + 0.5;

        Assert.Equal(TimeOnly.Parse(expected, CultureInfo.InvariantCulture).ToTimeSpan().TotalMinutes, shown!.Value.TimeOfDay.TotalMinutes, allowed);
    }

    private static Daylight Of(PublishedRow row) => Daylight.Of(
        DateOnly.Parse(row.Inputs["date"], CultureInfo.InvariantCulture),
        Angle.FromDegrees(row["lat"]),
        Angle.FromDegrees(row["lon"]),
        TimeSpan.FromHours(row["tz"]));

    private static DateTimeOffset Instant(PublishedRow row) =>
        DateTimeOffset.Parse(row.Inputs["UTC"], CultureInfo.InvariantCulture);
}
