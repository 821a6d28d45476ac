using System.Globalization;
using CrewBot.Chat.Commands;
using CrewBot.Chat.Quantities;
using CsCheck;
using UnitsNet;

namespace CrewBot.Chat.Tests.Quantities;

public sealed class ShowingTests
{
    private static readonly Showing Customary = Showing.In(CrewUnits.Customary);
    private static readonly Showing Metric = Showing.In(CrewUnits.Metric);

    // Those that nobody has thought of, and those with few decimals: halves, and what is next to one.
    private static readonly Gen<double> AnyNumber = Gen.OneOf(
        Gen.Double[1e-4, 2e6],
        Gen.Select(Gen.Int[1, 20_000], Gen.Int[0, 3], static (whole, decimals) => whole / Math.Pow(10, decimals)),
        Gen.Int[1, 40_000].Select(static halves => halves * 0.05),
        Gen.Int[1, 40_000].Select(static halves => Math.BitDecrement(halves * 0.005)));

    [Theory]
    [InlineData(7.3152, "24 ft (7.3 m)", "7.3 m (24 ft)")]
    [InlineData(0.3048, "1 ft (0.3 m)", "0.3 m (1 ft)")]
    [InlineData(10, "32.8 ft (10 m)", "10 m (32.8 ft)")]
    public void Depth_EitherCrew_ReadsItsOwnUnitFirst(double metres, string customary, string metric)
    {
        Assert.Equal(customary, Customary.Depth(Length.FromMeters(metres)));
        Assert.Equal(metric, Metric.Depth(Length.FromMeters(metres)));
    }

    // Small numbers are put together from whole ones: the runtime's own way says what must come out, halves and all.
    [Fact]
    public void Pull_AnyForce_IsWrittenAsTheRuntimeWritesATenth() => AnyNumber.Sample(kilograms =>
    {
        var pull = Force.FromKilogramsForce(kilograms);
        var (metric, customary) = (pull.KilogramsForce.ToString("0.0", CultureInfo.InvariantCulture), pull.PoundsForce.ToString("0.0", CultureInfo.InvariantCulture));
        Assert.Equal($"{metric} kg ({customary} lb)", Metric.Pull(pull));
    });

    [Fact]
    public void Fine_AnyDiameter_IsWrittenAsTheRuntimeWritesIt() => AnyNumber.Sample(millimetres =>
    {
        var diameter = Length.FromMillimeters(millimetres);
        var format = diameter.Millimeters < 1 ? "0.00" : "0.0";
        Assert.Equal($"{diameter.Millimeters.ToString(format, CultureInfo.InvariantCulture)} mm", Showing.Fine(diameter));
    });

    [Fact]
    public void Depth_AnyDepth_IsWrittenAsTheRuntimeWritesIt() => AnyNumber.Sample(metres =>
    {
        static double Tenth(double number) => Math.Round(number, 1, MidpointRounding.AwayFromZero);
        var depth = Length.FromMeters(metres);
        Assert.Equal(
            string.Create(CultureInfo.InvariantCulture, $"{Tenth(depth.Meters)} m ({Tenth(depth.Feet)} ft)"), Metric.Depth(depth));
    });

    [Theory]
    [InlineData(0.125, "1/8 oz (3.5 g)")]
    [InlineData(1.0 / 64, "1/64 oz (0.44 g)")]
    [InlineData(1.0 / 50, "1/50 oz (0.57 g)")]
    [InlineData(0.09375, "3/32 oz (2.7 g)")]
    [InlineData(0.1875, "3/16 oz (5.3 g)")]
    [InlineData(0.75, "3/4 oz (21 g)")]
    [InlineData(1, "1 oz (28 g)")]
    [InlineData(1.25, "1 1/4 oz (35 g)")]
    public void Lure_TradeWeight_IsTheFractionOnThePacket(double ounces, string shown) =>
        Assert.Equal(shown, Customary.Lure(Mass.FromOunces(ounces)));

    [Theory]
    [InlineData(0.2, "1 s")]
    [InlineData(8.4, "8 s")]
    [InlineData(100, "1 min 40 s")]
    public void Span_OfTime_IsNeverNone(double seconds, string shown) =>
        Assert.Equal(shown, Showing.Span(Duration.FromSeconds(seconds)));

    [Fact]
    public void Test_LabelledTest_IsAsOnTheLabel()
    {
        Assert.Equal("10 lb (4.5 kg)", Customary.Test(Force.FromPoundsForce(10)));
        Assert.Equal("4.5 kg (10 lb)", Metric.Test(Force.FromPoundsForce(10)));
    }

    [Theory]
    [InlineData(3, 4.8, "3.0–4.8 lb (1.4–2.2 kg)")]
    [InlineData(15, 15, "15.0 lb (6.8 kg)")]
    [InlineData(0.5, 0.6, "0.5–0.6 lb (0.2–0.3 kg)")]
    public void Pulls_Range_IsOneRangeInEachUnit(double low, double high, string shown) =>
        Assert.Equal(shown, Customary.Pulls(Force.FromPoundsForce(low), Force.FromPoundsForce(high)));

    [Theory]
    [InlineData(-12, "10 °F (-12 °C)")]
    [InlineData(0, "32 °F (0 °C)")]
    [InlineData(-17.8, "0 °F (-18 °C)")]
    [InlineData(-0.2, "32 °F (0 °C)")]
    public void Degrees_Temperature_HasNoNegativeZero(double celsius, string shown) =>
        Assert.Equal(shown, Customary.Degrees(Temperature.FromDegreesCelsius(celsius)));

    [Theory]
    [InlineData(8.4, "8 s")]
    [InlineData(80, "80 s")]
    [InlineData(90, "1 min 30 s")]
    [InlineData(119.7, "2 min 0 s")]
    [InlineData(3599.9, "60 min 0 s")]
    public void Span_Time_NeverCountsSixtySeconds(double seconds, string shown) =>
        Assert.Equal(shown, Showing.Span(Duration.FromSeconds(seconds)));

    [Theory]
    [InlineData(0.762, "30 in (76 cm)")]
    [InlineData(0.0127, "1/2 in (1 cm)")]
    [InlineData(0.05, "2 in (5 cm)")]
    [InlineData(1.524, "5 ft (1.5 m)")]
    [InlineData(0, "0 in (0 mm)")]
    public void Gap_LengthAtHand_TakesTheUnitThatFits(double metres, string shown) =>
        Assert.Equal(shown, Customary.Gap(Length.FromMeters(metres)));

    [Fact]
    public void Format_TextWithQuantities_WritesEachInItsForm()
    {
        FormattableString text =
            $"{Length.FromFeet(24)}, {Length.FromInches(30):gap}, {Length.FromMillimeters(0.18):fine}, {Mass.FromOunces(0.125):lure}, {Mass.FromKilograms(2)}, {Force.FromPoundsForce(10):test}, {Angle.FromDegrees(12.4)}, {7.25:0.0}";

        Assert.Equal(
            "24 ft (7.3 m), 30 in (76 cm), 0.18 mm, 1/8 oz (3.5 g), 4.4 lb (2 kg), 10 lb (4.5 kg), 12°, 7.3",
            text.ToString(Customary));
    }

    // What is printed is what people type back: half of the last digit shown is all that may be lost.
    [Theory]
    [InlineData(CrewUnits.Customary, 0.3048 / 20)]
    [InlineData(CrewUnits.Metric, 1.0 / 20)]
    public void Depth_ReadBack_IsTheSameWithinRounding(CrewUnits units, double half) =>
        Gen.Double[0.31, 149.9].Sample(metres =>
        {
            var shown = Showing.In(units).Depth(Length.FromMeters(metres));
            Assert.Equal(metres, ReadBack(QuantityReaders.Depth, shown, units).Meters, half + 1e-9);
        });

    [Theory]
    [InlineData(CrewUnits.Customary)]
    [InlineData(CrewUnits.Metric)]
    public void Lure_ReadBack_IsTheSameWithinTwoFigures(CrewUnits units) =>
        Gen.Double[Math.Log(0.051), Math.Log(249)].Select(Math.Exp).Sample(grams =>
        {
            var shown = Showing.In(units).Lure(Mass.FromGrams(grams));
            Assert.Equal(1, ReadBack(QuantityReaders.LureWeight, shown, units).Grams / grams, 0.0501);
        });

    [Fact]
    public void Degrees_ReadBack_IsTheSameWithinADegree() => Gen.Double[-59, 29].Sample(celsius =>
    {
        var shown = Customary.Degrees(Temperature.FromDegreesCelsius(celsius));
        Assert.Equal(celsius, ReadBack(QuantityReaders.Air, shown, CrewUnits.Customary).DegreesCelsius, 0.2778);
    });

    private static T ReadBack<T>(QuantityReader<T> reader, string shown, CrewUnits units)
    {
        var reading = reader.Read(shown[..shown.IndexOf(" (", StringComparison.Ordinal)], units);
        Assert.Null(reading.Fault);
        return reading.Value!;
    }
}
