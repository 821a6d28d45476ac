using System.Globalization;
using CrewBot.Core.Fish;
using CrewBot.Core.Tests.Published;
using CsCheck;
using UnitsNet;
using UnitsNet.Units;

namespace CrewBot.Core.Tests.Fish;

public sealed class ExactLengthTests
{
    private static readonly ExactLength Quarter = ExactLength.From(0.25m, LengthUnit.Inch);

    // 1 in = 25.4 mm by definition (international yard and pound agreement, 1959).
    [Theory]
    [InlineData("12.25", LengthUnit.Inch, 311_150_000)]
    [InlineData("0.015625", LengthUnit.Inch, 396_875)]
    [InlineData("1", LengthUnit.Foot, 304_800_000)]
    [InlineData("1", LengthUnit.Yard, 914_400_000)]
    [InlineData("2", LengthUnit.Fathom, 3_657_600_000)]
    [InlineData("58.5", LengthUnit.Centimeter, 585_000_000)]
    [InlineData("584.9", LengthUnit.Millimeter, 584_900_000)]
    [InlineData("1000", LengthUnit.Meter, ExactLength.MaxNanometres)]
    public void From_NumberAsRead_IsExact(string number, LengthUnit unit, long nanometres)
    {
        var length = ExactLength.From(decimal.Parse(number, CultureInfo.InvariantCulture), unit);

        Assert.Equal((nanometres, unit), (length.Nanometres, length.Unit));
        Assert.Equal(decimal.Parse(number, CultureInfo.InvariantCulture), length.Number);
    }

    [Fact]
    public void From_ThirdOfAnInch_GoesToTheNearestNanometre() =>
        Assert.Equal(8_466_667, ExactLength.From(1m / 3, LengthUnit.Inch).Nanometres);

    // Binary fractions lose a quarter on each of these: floor(inches × 25.4 / 25.4 × 4) comes out a step short.
    [Theory]
    [InlineData(6)]
    [InlineData(7.25)]
    [InlineData(12)]
    [InlineData(13.25)]
    [InlineData(14.5)]
    [InlineData(15.75)]
    [InlineData(24)]
    [InlineData(25.25)]
    [InlineData(26.5)]
    [InlineData(27.75)]
    [InlineData(29)]
    [InlineData(30.25)]
    [InlineData(31.5)]
    [InlineData(48)]
    public void FloorTo_QuarterInchThatBinaryLoses_StaysOnItsLine(double inches)
    {
        var steps = (long)(inches * 4);
        Assert.Equal(steps - 1, (long)Math.Floor(inches * 25.4 / 25.4 * 4));

        ExactLength[] read =
        [
            ExactLength.From((decimal)inches, LengthUnit.Inch),
            ExactLength.From((decimal)inches * 25.4m, LengthUnit.Millimeter),
            ExactLength.Nearest(Length.FromInches(inches)),
            ExactLength.Nearest(Length.FromMillimeters(inches * 25.4)),
            ExactLength.Nearest(Length.FromMeters(inches * 0.0254)),
        ];

        Assert.All(read, length => Assert.Equal(steps, length.WholeSteps(Quarter)));
        Assert.All(read, length => Assert.Equal((decimal)inches, length.FloorTo(Quarter).Number));
    }

    [Theory]
    [PublishedRows("scored_length")]
    public void FloorTo_LengthInTable_AgreesWithTable(PublishedRow row)
    {
        var inMillimetres = row.Has("measured_mm");
        var read = decimal.Parse(row.Inputs[inMillimetres ? "measured_mm" : "measured_in"], CultureInfo.InvariantCulture);
        var measured = ExactLength.From(read, inMillimetres ? LengthUnit.Millimeter : LengthUnit.Inch);
        var grid = row.Inputs["grid"] == "0.5cm" ? ExactLength.From(0.5m, LengthUnit.Centimeter) : Quarter;

        var scored = measured.FloorTo(grid);

        Assert.Equal(row.Expected, scored.Number.ToString("0.00", CultureInfo.InvariantCulture));
        Assert.Equal(grid.Unit, scored.Unit);
    }

    [Fact]
    public void FloorTo_AnyLength_LosesLessThanAStepAndNeverGains() =>
        Gen.Select(Gen.Long[0, 2_000_000_000], Gen.Long[1, 20_000_000]).Sample((nanometres, step) =>
        {
            var grid = new ExactLength(step, LengthUnit.Inch);
            var lost = nanometres - new ExactLength(nanometres, LengthUnit.Millimeter).FloorTo(grid).Nanometres;

            Assert.InRange(lost, 0, step - 1);
        });

    [Fact]
    public void Nearest_SixtyFourthsOfAnInch_AreExactInEveryUnit() =>
        Gen.Int[0, 64 * 80].Sample(sixtyFourths =>
        {
            var inches = Length.FromInches(sixtyFourths / 64.0);

            Assert.Equal(396_875L * sixtyFourths, ExactLength.Nearest(inches).Nanometres);
            Assert.Equal(396_875L * sixtyFourths, ExactLength.Nearest(inches.ToUnit(LengthUnit.Meter)).Nanometres);
        });

    [Theory]
    [InlineData(LengthUnit.Millimeter, UnitFamily.Metric)]
    [InlineData(LengthUnit.Centimeter, UnitFamily.Metric)]
    [InlineData(LengthUnit.Meter, UnitFamily.Metric)]
    [InlineData(LengthUnit.Inch, UnitFamily.Inch)]
    [InlineData(LengthUnit.Foot, UnitFamily.Inch)]
    [InlineData(LengthUnit.Yard, UnitFamily.Inch)]
    [InlineData(LengthUnit.Fathom, UnitFamily.Inch)]
    public void Family_OfEachUnit_IsItsOwn(LengthUnit unit, UnitFamily family) =>
        Assert.Equal(family, new ExactLength(1, unit).Family);

    [Fact]
    public void Length_ForCalculations_KeepsNumberAndUnit()
    {
        var length = ExactLength.From(22.25m, LengthUnit.Inch).Length;

        Assert.Equal((22.25, LengthUnit.Inch), (length.Value, length.Unit));
    }

    [Fact]
    public void ExactLength_OutsideItsRange_Throws()
    {
        Assert.Throws<ArgumentOutOfRangeException>("number", () => ExactLength.From(-0.01m, LengthUnit.Inch));
        Assert.Throws<ArgumentOutOfRangeException>("number", () => ExactLength.From(1000.1m, LengthUnit.Meter));
        Assert.Throws<ArgumentOutOfRangeException>("unit", () => ExactLength.From(1, LengthUnit.Mile));
        Assert.Throws<ArgumentOutOfRangeException>("unit", () => new ExactLength(1, LengthUnit.Mile));
        Assert.Throws<ArgumentOutOfRangeException>("nanometres", () => new ExactLength(-1, LengthUnit.Inch));
        Assert.Throws<ArgumentOutOfRangeException>("length", () => ExactLength.Nearest(Length.FromMeters(1e20)));
        Assert.Throws<ArgumentOutOfRangeException>("length", () => ExactLength.Nearest(Length.FromMeters(-1)));
        Assert.Throws<ArgumentOutOfRangeException>("step", () => Quarter.FloorTo(new ExactLength(0, LengthUnit.Inch)));
    }
}
