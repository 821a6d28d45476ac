using System.Globalization;
using CrewBot.Core.Ice;
using CrewBot.Core.Tests.Published;
using CrewBot.Core.Weather;
using CsCheck;
using UnitsNet;

namespace CrewBot.Core.Tests.Ice;

public sealed class GrowingWeatherTests
{
    // To the hundredth of a degree: more than a thermometer shows, and far from where numbers run out of digits.
    private static readonly Gen<IReadOnlyList<DayTemperatures>> Winters = Gen.Select(Gen.Int[-6000, 3000], Gen.Int[0, 4000])
        .Select((most, span) => (most / 100.0, span / 100.0))
        .Select((most, span) => new DayTemperatures(Temperature.FromDegreesCelsius(most), Temperature.FromDegreesCelsius(Math.Max(-60, most - span))))
        .Array[1, GrowingWeather.MostDays]
        .Select(days => (IReadOnlyList<DayTemperatures>)days);

    [Theory]
    [PublishedRows("AFDD_running")]
    public void Frost_OfDays_IsThePublishedSum(PublishedRow row)
    {
        var means = row.Inputs["mean_C"].Split(' ').Select(text => double.Parse(text, CultureInfo.InvariantCulture));

        Assert.Equal(double.Parse(row.Expected.Split(' ')[^1], CultureInfo.InvariantCulture), Of([.. means]).Frost.Celsius, 0.01);
    }

    [Theory]
    [InlineData(IceWeather.Freezing, -10.0, -12.0)]
    [InlineData(IceWeather.ThawingByDay, -10.0, -3.0)] // its maximum is 2 °C
    [InlineData(IceWeather.Thawing, -10.0, -10.0, 2.0, 2.0, 2.0)]
    [InlineData(IceWeather.None, -2.0, 5.0)]
    public void Kind_OfDays_IsWhatTheyDid(IceWeather kind, params double[] means) => Assert.Equal(kind, Of(means).Kind);

    // Stefan's root: frost of 300 after 200 °C·day has 1 - √(2/3) of the growth, 18.4 %.
    [Fact]
    public void ShareLately_ByTheRoot_FallsAsFrostSumsUp()
    {
        Assert.Equal(18.35, Of([-100.0 / 3, -100.0 / 3, -100.0 / 3, -100.0 / 3, -100.0 / 3, -100.0 / 3, -100.0 / 3, -100.0 / 3, -100.0 / 3]).ShareLately!.Value.Percent, 0.01);
        Assert.Null(Of([-10, -10, -10]).ShareLately);
        Assert.Null(Of([-10, -10, 1, 1, 1]).ShareLately);
    }

    // 10 °C·day: 11.2 cm by the ceiling of Stefan's form, 4.67 by Ashton's (constants of G. D. Ashton's encyclopedia article).
    [Fact]
    public void FullerForm_OfThinIce_IsWellBelowTheSimpleOne()
    {
        Assert.Equal(4.67 / 11.25, Of([-10]).FullerForm!.Value.DecimalFractions, 0.002);
        Assert.Null(Of([5]).FullerForm);
    }

    [Fact]
    public void Under_AnySnow_SlowsAndNewSnowSlowsMore() => Gen.Select(Winters, Gen.Double[0, 3]).Sample((days, metres) =>
    {
        var weather = GrowingWeather.Of(days);
        if (weather.Under(Length.FromMeters(metres)) is not { } under)
        {
            Assert.True(weather.Frost.Celsius <= 0);
            return;
        }

        Assert.InRange(under.Packed.DecimalFractions, 0, 1 + 1e-9);
        Assert.True(under.New <= under.Packed);
    });

    [Fact]
    public void Of_AnyWinter_StaysWithinItsMeaning() => Winters.Sample(days =>
    {
        var weather = GrowingWeather.Of(days);

        Assert.True(weather.Frost.Celsius >= 0);
        Assert.True(weather.FullerForm is not { } fuller || fuller.DecimalFractions is > 0 and < 1);
        Assert.True(weather.ShareLately is not { } share || share.DecimalFractions is > 0 and <= 1);
    });

    // A difference of roots made nothing of so little frost.
    [Fact]
    public void FullerForm_OfHardlyAnyFrost_IsStillSomething()
    {
        Assert.InRange(Of([-1e-15]).FullerForm!.Value.DecimalFractions, 1e-9, 1e-6);
        Assert.InRange(Of([-10, -10, -10, -1e-14, -1e-14, -1e-14]).ShareLately!.Value.DecimalFractions, 1e-17, 1e-14);
    }

    [Fact]
    public void Of_NoDaysOrTooMany_IsRefused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Of([]));
        Assert.Throws<ArgumentOutOfRangeException>(() => Of(Enumerable.Repeat(-1.0, GrowingWeather.MostDays + 1)));
    }

    private static GrowingWeather Of(IEnumerable<double> means) => GrowingWeather.Of(
        [.. means.Select(mean => new DayTemperatures(Temperature.FromDegreesCelsius(mean + 5), Temperature.FromDegreesCelsius(mean - 5)))]);
}
