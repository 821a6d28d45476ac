using CrewBot.Core.Lines;
using CrewBot.Core.Tests.Published;
using CsCheck;
using UnitsNet;

namespace CrewBot.Core.Tests.Lines;

public sealed class SpoolFillTests
{
    // The two units of a row cancel: read as metres and millimetres throughout.
    [Theory]
    [PublishedRows("capacity_other_diameter")]
    public void LengthOf_SpoolInTable_AgreesWithTable(PublishedRow row) =>
        row.Check(SpoolFill.LengthOf(Line(row["L1"], row["d1"]), Length.FromMillimeters(row["d2"]), fill: 1).Meters);

    [Theory]
    [PublishedRows("backing_length")]
    public void BackingUnder_SpoolInTable_AgreesWithTable(PublishedRow row) =>
        row.Check(SpoolFill.BackingUnder(
            Line(row["L1"], row["d1"]),
            Line(row["L_top"], row["d_top"]),
            Length.FromMillimeters(row["d_back"]),
            fill: 1)!.Value.Meters);

    // 120 m of 0.22 mm against 0.18 mm: 120 × (22/18)² = 179.26 m full, 170.30 m at 95 %.
    [Theory]
    [InlineData(1, 179.259)]
    [InlineData(0.95, 170.296)]
    public void LengthOf_PartlyFilled_ShrinksWithTheFill(double fill, double metres) =>
        Assert.Equal(metres, SpoolFill.LengthOf(Line(120, 0.22), Length.FromMillimeters(0.18), fill).Meters, 0.001);

    [Fact]
    public void BackingUnder_TopLineThatOverfills_IsNone()
    {
        Length? Backing(double topMetres, double fill) => SpoolFill.BackingUnder(
            Line(100, 0.2), Line(topMetres, 0.2), Length.FromMillimeters(0.3), fill);

        Assert.Null(Backing(100.1, fill: 1));
        Assert.Null(Backing(100, fill: 0.95));
        Assert.Equal(0, Backing(100, fill: 1)!.Value.Meters, 1e-9);
    }

    [Fact]
    public void BackingUnder_WithItsTopLine_FillsTheSpool() =>
        Gen.Select(Gen.Double[0, 0.99], Gen.Double[0.1, 0.5], Gen.Double[0.1, 0.5], Gen.Double[0.5, 1])
            .Where((share, _, _, _) => share > 0)
            .Sample((share, top, backing, fill) =>
            {
                var rated = Line(150, 0.3);
                var topLength = share * SpoolFill.LengthOf(rated, Length.FromMillimeters(top), fill).Meters;
                var under = SpoolFill
                    .BackingUnder(rated, Line(topLength, top), Length.FromMillimeters(backing), fill)!.Value;

                Assert.Equal(fill * 150 * 0.09, (topLength * top * top) + (under.Meters * backing * backing), 1e-9);
            });

    [Theory]
    [InlineData(0)]
    [InlineData(1.01)]
    [InlineData(double.NaN)]
    public void SpoolFill_OutsideTheRange_Throws(double fill)
    {
        Assert.Throws<ArgumentOutOfRangeException>(
            nameof(fill), () => SpoolFill.LengthOf(Line(100, 0.2), Length.FromMillimeters(0.2), fill));
        Assert.Throws<ArgumentOutOfRangeException>(
            "diameter", () => SpoolFill.LengthOf(Line(100, 0.2), Length.Zero, 1));
        Assert.Throws<ArgumentOutOfRangeException>("Length", () => Line(0, 0.2));
        Assert.Throws<ArgumentOutOfRangeException>("Diameter", () => Line(100, 0));
    }

    private static LineOnSpool Line(double metres, double millimetres) =>
        new(Length.FromMeters(metres), Length.FromMillimeters(millimetres));
}
