using CrewBot.Core.Lines;
using CrewBot.Core.Tests.Published;
using CsCheck;
using UnitsNet;

namespace CrewBot.Core.Tests.Lines;

public sealed class StretchTests
{
    private static readonly ElasticLine Nylon = new(Length.FromMillimeters(0.2), Pressure.FromGigapascals(2));

    [Theory]
    [PublishedRows("elastic_stretch")]
    public void Of_LineInTable_AgreesWithTable(PublishedRow row) =>
        row.Check(Stretch.Of(Line(row), Force.FromNewtons(row["F_N"]), Length.FromMeters(row["L_m"])).Meters);

    [Theory]
    [PublishedRows("elastic_strain")]
    public void StrainUnder_LineInTable_AgreesWithTable(PublishedRow row) =>
        row.Check(Line(row).StrainUnder(Force.FromNewtons(row["F_N"])).Percent);

    // 5 N on 10 m of 0.20 mm nylon gives 0.796 m (table): half a metre of rod is all taken up, of one metre a fifth
    // is left.
    [Theory]
    [InlineData(0.5, 0)]
    [InlineData(1.0, 0.20423)]
    [InlineData(2.0, 0.60211)]
    public void ShareReachingLure_NylonAtDepth_IsWhatTheStretchLeaves(double movement, double share) =>
        Assert.Equal(
            share,
            Stretch.ShareReachingLure(Nylon, Force.FromNewtons(5), Length.FromMeters(10), Length.FromMeters(movement))
                .DecimalFractions,
            1e-5);

    [Fact]
    public void ShareReachingLure_MoreLine_IsNeverMore() =>
        Gen.Select(Gen.Double[0, 20], Gen.Double[0, 60], Gen.Double[1, 3], Gen.Double[0.1, 2])
            .Sample((pull, length, factor, movement) =>
            {
                double Share(double metres) => Stretch
                    .ShareReachingLure(
                        Nylon, Force.FromNewtons(pull), Length.FromMeters(metres), Length.FromMeters(movement))
                    .DecimalFractions;

                Assert.InRange(Share(length * factor), 0, Share(length));
                Assert.True(Share(length) <= 1);
            });

    [Theory]
    [PublishedRows("implied_tensile_strength")]
    public void ImpliedBy_LabelInTable_AgreesWithTable(PublishedRow row) =>
        row.Check(TensileStrength
            .ImpliedBy(Force.FromPoundsForce(row["test_lb"]), Length.FromInches(row["d_inch"]), 1).Megapascals);

    [Theory]
    [PublishedRows("fresnel_reflectance_normal_incidence")]
    public void AtNormalIncidence_LineInTable_AgreesWithTable(PublishedRow row) =>
        row.Check(Reflectance.AtNormalIncidence(row["n_line"]).Percent);

    [Theory]
    [InlineData(0, 2, 1, "Diameter")]
    [InlineData(3.1, 2, 1, "Diameter")]
    [InlineData(0.2, 0, 1, "Modulus")]
    [InlineData(0.2, 251, 1, "Modulus")]
    [InlineData(0.2, 2, 0, "SolidFraction")]
    [InlineData(0.2, 2, 1.01, "SolidFraction")]
    public void ElasticLine_OutsideItsRange_Throws(
        double millimetres, double gigapascals, double solid, string parameter) =>
        Assert.Throws<ArgumentOutOfRangeException>(parameter, () =>
            new ElasticLine(Length.FromMillimeters(millimetres), Pressure.FromGigapascals(gigapascals), solid));

    [Fact]
    public void Calculations_OutsideTheirRange_Throw()
    {
        var (pull, length) = (Force.FromNewtons(5), Length.FromMeters(10));

        Assert.Throws<ArgumentOutOfRangeException>("pull", () => Stretch.Of(Nylon, -pull, length));
        Assert.Throws<ArgumentOutOfRangeException>("length", () => Stretch.Of(Nylon, pull, -length));
        Assert.Throws<ArgumentOutOfRangeException>(
            "movement", () => Stretch.ShareReachingLure(Nylon, pull, length, Length.Zero));
        Assert.Throws<ArgumentOutOfRangeException>("lineIndex", () => Reflectance.AtNormalIncidence(0.9));
        Assert.Throws<ArgumentOutOfRangeException>(
            "solidFraction", () => TensileStrength.ImpliedBy(pull, length, 2));
        Assert.Throws<ArgumentOutOfRangeException>("test", () => TensileStrength.ImpliedBy(Force.Zero, length, 1));
    }

    private static ElasticLine Line(PublishedRow row) => new(
        Length.FromMillimeters(row["d_mm"]), Pressure.FromGigapascals(row["E_GPa"]), row["solid_fraction"]);
}
