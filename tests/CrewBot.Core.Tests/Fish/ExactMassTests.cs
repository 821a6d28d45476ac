using System.Globalization;
using CrewBot.Core.Fish;
using CrewBot.Core.Tests.Published;
using CsCheck;
using UnitsNet;
using UnitsNet.Units;

namespace CrewBot.Core.Tests.Fish;

public sealed class ExactMassTests
{
    private static readonly ExactMass Ounce = ExactMass.From(1, MassUnit.Ounce);

    // 1 lb = 453.59237 g by definition (international yard and pound agreement, 1959).
    [Theory]
    [InlineData("1", MassUnit.Ounce, 28_349_523_125)]
    [InlineData("1", MassUnit.Pound, 453_592_370_000)]
    [InlineData("1.25", MassUnit.Kilogram, 1_250_000_000_000)]
    [InlineData("2948.35", MassUnit.Gram, 2_948_350_000_000)]
    [InlineData("1000", MassUnit.Kilogram, ExactMass.MaxNanograms)]
    public void From_NumberAsRead_IsExact(string number, MassUnit unit, long nanograms)
    {
        var mass = ExactMass.From(decimal.Parse(number, CultureInfo.InvariantCulture), unit);

        Assert.Equal((nanograms, unit), (mass.Nanograms, mass.Unit));
        Assert.Equal(decimal.Parse(number, CultureInfo.InvariantCulture), mass.Number);
        Assert.Equal(mass, ExactMass.Nearest(mass.Mass));
    }

    [Theory]
    [PublishedRows("scored_weight")]
    public void WholeSteps_OfAnOunce_AgreeWithTable(PublishedRow row)
    {
        var grams = decimal.Parse(row.Inputs["weight_g"], CultureInfo.InvariantCulture);

        var ounces = ExactMass.From(grams, MassUnit.Gram).WholeSteps(Ounce);

        Assert.Equal(row.Expected, $"{ounces / 16} lb {ounces % 16} oz");
    }

    [Fact]
    public void FloorTo_WholeOuncesInPounds_StayOnTheirStep() =>
        Gen.Int[0, 16 * 60].Sample(ounces =>
        {
            var mass = ExactMass.Nearest(Mass.FromPounds(ounces / 16.0));

            Assert.Equal(ounces, mass.FloorTo(Ounce).Number);
        });

    [Fact]
    public void ExactMass_OutsideItsRange_Throws()
    {
        Assert.Throws<ArgumentOutOfRangeException>("number", () => ExactMass.From(-0.01m, MassUnit.Gram));
        Assert.Throws<ArgumentOutOfRangeException>("number", () => ExactMass.From(1000.1m, MassUnit.Kilogram));
        Assert.Throws<ArgumentOutOfRangeException>("unit", () => ExactMass.From(1, MassUnit.Stone));
        Assert.Throws<ArgumentOutOfRangeException>("unit", () => new ExactMass(1, MassUnit.Stone));
        Assert.Throws<ArgumentOutOfRangeException>("nanograms", () => new ExactMass(-1, MassUnit.Gram));
        Assert.Throws<ArgumentOutOfRangeException>("mass", () => ExactMass.Nearest(Mass.FromKilograms(1e20)));
        Assert.Throws<ArgumentOutOfRangeException>("step", () => Ounce.FloorTo(new ExactMass(0, MassUnit.Gram)));
    }
}
