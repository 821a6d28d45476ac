using CrewBot.Core.Trips;
using UnitsNet;

namespace CrewBot.Core.Tests.Trips;

public sealed class HourlyForecastTests
{
    private static readonly ForecastPoint Seven = new(new TimeOnly(7, 0), Temperature.FromDegreesCelsius(-20), Speed.FromKilometersPerHour(10));
    private static readonly ForecastPoint Eleven = new(new TimeOnly(11, 0), Temperature.FromDegreesCelsius(-12), Speed.FromKilometersPerHour(30));

    // By hand: a quarter of the way every hour; outside the points as the nearest one.
    [Theory]
    [InlineData(6, -20, 10)]
    [InlineData(7, -20, 10)]
    [InlineData(8, -18, 15)]
    [InlineData(10, -14, 25)]
    [InlineData(11, -12, 30)]
    [InlineData(13, -12, 30)]
    public void Between_HourOfTheDay_LiesOnTheLine(int hour, double celsius, double kmh)
    {
        var at = HourlyForecast.Between([Eleven, Seven], new TimeOnly(6, 0), new TimeOnly(13, 30)).Single(point => point.Clock.Hour == hour);

        Assert.Equal(celsius, at.Air.DegreesCelsius, tolerance: 1e-9);
        Assert.Equal(kmh, at.Wind.KilometersPerHour, tolerance: 1e-9);
    }

    [Fact]
    public void Between_PartOfAnHour_CountsFullHoursAlone() => Assert.Equal(
        [8, 9], HourlyForecast.Between([Seven], new TimeOnly(7, 1), new TimeOnly(9, 59)).Select(point => point.Clock.Hour));

    [Fact]
    public void Between_NoPoint_Throws() => Assert.Throws<ArgumentException>(() => HourlyForecast.Between([], new TimeOnly(7, 0), new TimeOnly(9, 0)));
}
