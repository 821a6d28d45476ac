using CrewBot.Chat.Commands;
using CrewBot.Chat.Quantities;
using CsCheck;

namespace CrewBot.Chat.Tests.Quantities;

/// <summary>
/// Quantities as people write them. Expected values follow from the definitions: foot 0.3048 m, pound 0.45359237 kg
/// (international yard and pound agreement, 1959), °F = 1.8 °C + 32.
/// </summary>
public sealed class QuantityReadingTests
{
    [Theory]
    [InlineData("24ft", 7.3152)]
    [InlineData("24 ft", 7.3152)]
    [InlineData("24'", 7.3152)]
    [InlineData("24′", 7.3152)]
    [InlineData("24’", 7.3152)]
    [InlineData("24 feet", 7.3152)]
    [InlineData("24FT", 7.3152)]
    [InlineData("24ft.", 7.3152)]
    [InlineData("24-ft", 7.3152)]
    [InlineData("4 fathoms", 7.3152)]
    [InlineData("8 yd", 7.3152)]
    [InlineData("288 in", 7.3152)]
    [InlineData("7.3 m", 7.3)]
    [InlineData("7,3 m", 7.3)]
    [InlineData("7,30m", 7.3)]
    [InlineData("730cm", 7.3)]
    [InlineData("7300 mm", 7.3)]
    [InlineData("5ft 6in", 1.6764)]
    [InlineData("5 feet 6 inches", 1.6764)]
    [InlineData("5'6\"", 1.6764)]
    [InlineData("5' 6", 1.6764)]
    [InlineData("5' 6 1/2\"", 1.6891)]
    [InlineData("2 1/2 ft", 0.762)]
    [InlineData("2-1/2 ft", 0.762)]
    [InlineData("2½ ft", 0.762)]
    [InlineData("½m", 0.5)]
    [InlineData("1½ fathoms", 2.7432)]
    [InlineData(".5 m", 0.5)]
    [InlineData("+24 ft", 7.3152)]
    [InlineData("024 ft", 7.3152)]
    public void Read_DepthInAnyUnit_GivesMetres(string text, double metres) =>
        Assert.Equal(metres, Read(QuantityReaders.Depth, text).Meters, 1e-9);

    [Theory]
    [InlineData("24", CrewUnits.Customary, 7.3152)]
    [InlineData("24", CrewUnits.Metric, 24)]
    [InlineData("7,5", CrewUnits.Metric, 7.5)]
    [InlineData("24 ft", CrewUnits.Metric, 7.3152)]
    public void Read_BareDepth_TakesTheCrewsUnit(string text, CrewUnits units, double metres) =>
        Assert.Equal(metres, Read(QuantityReaders.Depth, text, units).Meters, 1e-9);

    [Theory]
    [InlineData("1/8 oz", 28.349523125 / 8)]
    [InlineData("1/8oz", 28.349523125 / 8)]
    [InlineData("⅛ oz", 28.349523125 / 8)]
    [InlineData("1⁄8 oz", 28.349523125 / 8)]
    [InlineData("0.125 ounces", 28.349523125 / 8)]
    [InlineData("1/64 oz", 28.349523125 / 64)]
    [InlineData("1 1/2 oz", 28.349523125 * 1.5)]
    [InlineData("1½ oz", 28.349523125 * 1.5)]
    [InlineData("3.5g", 3.5)]
    [InlineData("3,5 g", 3.5)]
    [InlineData("0.0035 kg", 3.5)]
    public void Read_LureWeightInAnyUnit_GivesGrams(string text, double grams) =>
        Assert.Equal(grams, Read(QuantityReaders.LureWeight, text).Grams, 1e-9);

    [Theory]
    [InlineData("1/8", CrewUnits.Customary, 28.349523125 / 8)]
    [InlineData("3.5", CrewUnits.Metric, 3.5)]
    public void Read_BareLureWeight_TakesTheCrewsUnit(string text, CrewUnits units, double grams) =>
        Assert.Equal(grams, Read(QuantityReaders.LureWeight, text, units).Grams, 1e-9);

    [Theory]
    [InlineData("-12C", -12)]
    [InlineData("-12 °C", -12)]
    [InlineData("−12 C", -12)]
    [InlineData("–12C", -12)]
    [InlineData("+3 C", 3)]
    [InlineData("10F", -110.0 / 9)]
    [InlineData("10 °F", -110.0 / 9)]
    [InlineData("-40F", -40)]
    [InlineData("-40", -40)]
    [InlineData("minus 12C", -12)]
    [InlineData("40 below", -40)]
    [InlineData("12C below zero", -12)]
    public void Read_AirInAnyUnit_GivesCelsius(string text, double celsius) =>
        Assert.Equal(celsius, Read(QuantityReaders.Air, text).DegreesCelsius, 1e-9);

    [Theory]
    [InlineData("32F", 0)]
    [InlineData("0C", 0)]
    [InlineData("39.2F", 4)]
    public void Read_WaterInAnyUnit_GivesCelsius(string text, double celsius) =>
        Assert.Equal(celsius, Read(QuantityReaders.Water, text).DegreesCelsius, 1e-9);

    [Theory]
    [InlineData("0.1 m/s", 0.1)]
    [InlineData("10cm/s", 0.1)]
    [InlineData("0.3ft/s", 0.09144)]
    [InlineData("1 mph", 0.44704)]
    [InlineData("1.8 km/h", 0.5)]
    public void Read_CurrentInAnyUnit_GivesMetresASecond(string text, double metresPerSecond) =>
        Assert.Equal(metresPerSecond, Read(QuantityReaders.Current, text).MetersPerSecond, 1e-9);

    [Theory]
    [InlineData("10lb", 10)]
    [InlineData("10 #", 10)]
    [InlineData("10", 10)]
    [InlineData("4.5359237 kg", 10)]
    public void Read_TestInAnyUnit_GivesPounds(string text, double pounds) =>
        Assert.Equal(pounds, Read(QuantityReaders.Test, text).PoundsForce, 1e-9);

    [Theory]
    [InlineData("11.34")]
    [InlineData("11.34 g/cm3")]
    [InlineData("11340 kg/m³")]
    public void Read_DensityInAnyUnit_GivesGramsPerCubicCentimetre(string text) =>
        Assert.Equal(11.34, Read(QuantityReaders.LureDensity, text).GramsPerCubicCentimeter, 1e-9);

    [Theory]
    [InlineData("1,234", "'1,234' could mean 1.234 or 1234: write the one you mean.")]
    [InlineData("1,234 m", "'1,234 m' could mean 1.234 m or 1234 m: write the one you mean.")]
    [InlineData("24 lb", "'24 lb' is a weight, not a depth. Give feet, metres or fathoms, such as 24ft.")]
    [InlineData("24 C", "'24 C' is a temperature, not a depth. Give feet, metres or fathoms, such as 24ft.")]
    [InlineData("24 arms", "can't read '24 arms'. Give feet, metres or fathoms, such as 24ft.")]
    [InlineData("deep", "can't read 'deep'. Give feet, metres or fathoms, such as 24ft.")]
    [InlineData("NaN", "can't read 'NaN'. Give feet, metres or fathoms, such as 24ft.")]
    [InlineData("infinity", "can't read 'infinity'. Give feet, metres or fathoms, such as 24ft.")]
    [InlineData("-∞", "can't read '-∞'. Give feet, metres or fathoms, such as 24ft.")]
    [InlineData("1e999", "can't read '1e999'. Give feet, metres or fathoms, such as 24ft.")]
    [InlineData("1e1 ft", "can't read '1e1 ft'. Give feet, metres or fathoms, such as 24ft.")]
    [InlineData("0x10 ft", "can't read '0x10 ft'. Give feet, metres or fathoms, such as 24ft.")]
    [InlineData("99999999999999999999 ft", "can't read '99999999999999999999 ft'. Give feet, metres or fathoms, such as 24ft.")]
    [InlineData("1/0 ft", "can't read '1/0 ft'. Give feet, metres or fathoms, such as 24ft.")]
    [InlineData("1.2.3 ft", "can't read '1.2.3 ft'. Give feet, metres or fathoms, such as 24ft.")]
    [InlineData("24ft 3lb", "can't read '24ft 3lb'. Give feet, metres or fathoms, such as 24ft.")]
    [InlineData("0", "'0' is outside 1 ft (0.3 m) to 492.1 ft (150 m). Give feet, metres or fathoms, such as 24ft.")]
    [InlineData("-3 ft", "'-3 ft' is outside 1 ft (0.3 m) to 492.1 ft (150 m). Give feet, metres or fathoms, such as 24ft.")]
    [InlineData("500 m", "'500 m' is outside 1 ft (0.3 m) to 492.1 ft (150 m). Give feet, metres or fathoms, such as 24ft.")]
    [InlineData("999999999 ft", "'999999999 ft' is outside 1 ft (0.3 m) to 492.1 ft (150 m). Give feet, metres or fathoms, such as 24ft.")]
    public void Read_DepthThatIsNone_SaysSoInALine(string text, string fault) =>
        Assert.Equal(fault, QuantityReaders.Depth.Read(text, CrewUnits.Customary).Fault);

    [Fact]
    public void Read_LureWeightBelowTheLeast_NamesALeastThatIsNotNothing() => Assert.Equal(
        "'0.01 g' is outside 0.0018 oz (0.05 g) to 8.8 oz (250 g). Give ounces or grams, such as 1/8oz.",
        QuantityReaders.LureWeight.Read("0.01 g", CrewUnits.Customary).Fault);

    [Fact]
    public void Read_BareDiameter_AsksForAUnit() => Assert.Equal(
        "'0.18' has no unit. Give millimetres or inches, such as 0.18mm.",
        QuantityReaders.Diameter.Read("0.18", CrewUnits.Customary).Fault);

    [Fact]
    public void Read_AnyText_GivesAValueInRangeOrALine() => Gen.OneOf(Gen.String, Mangled).Sample(text =>
    {
        var reading = QuantityReaders.Depth.Read(text, CrewUnits.Customary);
        if (reading.Fault is { } fault)
        {
            Assert.DoesNotContain('\n', fault);
            Assert.InRange(fault.Length, 1, 200);
        }
        else
        {
            Assert.InRange(reading.Value.Meters, 0.3, 150);
        }
    });

    private static Gen<string> Mangled { get; } =
        Gen.Char["0123456789.,/-+ '\"ftminozeE½⅛−"].Array[0, 12].Select(characters => new string(characters));

    private static T Read<T>(QuantityReader<T> reader, string text, CrewUnits units = CrewUnits.Customary)
    {
        var reading = reader.Read(text, units);
        Assert.Null(reading.Fault);
        return reading.Value!;
    }
}
