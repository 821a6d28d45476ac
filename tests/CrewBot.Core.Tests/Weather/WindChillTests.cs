using CrewBot.Core.Tests.Published;
using CrewBot.Core.Weather;
using UnitsNet;

namespace CrewBot.Core.Tests.Weather;

public sealed class WindChillTests
{
    [Theory]
    [PublishedRows("wind_chill_C_chart")]
    public void Canadian_ChartCell_PrintsTheSame(PublishedRow row) =>
        row.Check(WindChill.Printed(WindChill.Canadian(Celsius(row), Kmh(row)).DegreesCelsius));

    [Theory]
    [PublishedRows("wind_chill_F_chart")]
    public void American_ChartCell_PrintsTheSame(PublishedRow row) =>
        row.Check(WindChill.Printed(WindChill.American(Fahrenheit(row), Mph(row)).DegreesFahrenheit));

    [Theory]
    [PublishedRows("wind_chill_C_raw", "wind_chill_C_lowwind")]
    public void Canadian_BeforeRounding_AgreesWithTable(PublishedRow row) =>
        row.Check(WindChill.Canadian(Celsius(row), Kmh(row)).DegreesCelsius);

    [Theory]
    [PublishedRows("wind_chill_F_raw")]
    public void American_BeforeRounding_AgreesWithTable(PublishedRow row) =>
        row.Check(WindChill.American(Fahrenheit(row), Mph(row)).DegreesFahrenheit);

    [Theory]
    [InlineData(10, 2.9)]
    [InlineData(51, 20)]
    public void American_WhereTheFormDoesNotHold_IsTheAirItself(double fahrenheit, double mph)
    {
        var air = Temperature.FromDegreesFahrenheit(fahrenheit);

        Assert.Equal(air, WindChill.American(air, Speed.FromMilesPerHour(mph)));
    }

    [Fact]
    public void Canadian_BothBranches_MeetAtFiveKilometresAnHour() // to within 0.002, as the reference says
    {
        for (var celsius = -50.0; celsius <= 0; celsius += 5)
        {
            var air = Temperature.FromDegreesCelsius(celsius);
            var below = WindChill.Canadian(air, Speed.FromKilometersPerHour(5 - 1e-9)).DegreesCelsius;

            Assert.Equal(WindChill.Canadian(air, Speed.FromKilometersPerHour(5)).DegreesCelsius, below, 0.01);
        }
    }

    [Theory]
    [InlineData(-0.5, 0)]
    [InlineData(-28.5, -28)]
    [InlineData(-28.51, -29)]
    public void Printed_Half_GoesUp(double index, int printed) => Assert.Equal(printed, WindChill.Printed(index));

    [Fact]
    public void Canadian_ColderThanCanBe_Throws() => Assert.Throws<ArgumentOutOfRangeException>(
        "air", () => WindChill.Canadian(Temperature.FromDegreesCelsius(-91), Speed.Zero));

    private static Temperature Celsius(PublishedRow row) => Temperature.FromDegreesCelsius(row["T_C"]);

    private static Temperature Fahrenheit(PublishedRow row) => Temperature.FromDegreesFahrenheit(row["T_F"]);

    private static Speed Kmh(PublishedRow row) => Speed.FromKilometersPerHour(row["V_kmh"]);

    private static Speed Mph(PublishedRow row) => Speed.FromMilesPerHour(row["V_mph"]);
}
