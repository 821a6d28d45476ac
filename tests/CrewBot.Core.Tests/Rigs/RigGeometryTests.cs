using CrewBot.Core.Rigs;
using CrewBot.Core.Tests.Published;
using CrewBot.Core.Water;
using CsCheck;
using UnitsNet;

namespace CrewBot.Core.Tests.Rigs;

public sealed class RigGeometryTests
{
    private static readonly Density Lead = Density.FromKilogramsPerCubicMeter(11340);

    // Shares of the bait's length, common practice.
    [Theory]
    [PublishedRows("hook_spacing_for_bait")]
    public void SpacingFor_BaitInTable_SpansTheTablesRange(PublishedRow row)
    {
        var spacing = TwoTrebleRig.SpacingFor(Length.FromInches(row["bait_inch"]));

        Assert.Equal(row.Ends[0], spacing.Least.Inches, 1e-9);
        Assert.Equal(row.Ends[1], spacing.Most.Inches, 1e-9);
    }

    [Theory]
    [PublishedRows("quick_strike_hook_spacing")]
    public void SpacingFor_AnyBaitThatSuits_MeetsTheUsualSpacing(PublishedRow row) =>
        Gen.Double[1, 25].Sample(inches =>
        {
            var bait = Length.FromInches(inches);
            if (!TwoTrebleRig.Suits(bait))
            {
                Assert.Throws<ArgumentOutOfRangeException>("bait", () => TwoTrebleRig.SpacingFor(bait));
                return;
            }

            var spacing = TwoTrebleRig.SpacingFor(bait);
            Assert.True(spacing.Most.Inches >= row.Ends[0] && spacing.Least.Inches <= row.Ends[1]);
        });

    [Theory]
    [PublishedRows("float_capacity_immersed_weight")]
    public void Immersed_FloatInTable_AgreesWithTable(PublishedRow row) => row.Check(Immersed(row).Grams);

    [Theory]
    [PublishedRows("float_capacity_lead_mass_in_air")]
    public void ShotInAir_FloatInTable_AgreesWithTable(PublishedRow row) =>
        row.Check(FloatCapacity.ShotInAir(Immersed(row), Lead, WaterOf(row)).Grams);

    [Fact]
    public void Immersed_FloatHeavierThanItsWater_CarriesNothing() =>
        Assert.Equal(0, FloatCapacity.Immersed(
            Volume.FromCubicCentimeters(1), Mass.FromGrams(1.2), Density.FromKilogramsPerCubicMeter(1000)).Grams);

    [Fact]
    public void FloatCapacity_OutsideItsRange_Throws()
    {
        var (volume, gram) = (Volume.FromCubicCentimeters(4), Mass.FromGrams(1));
        var water = Density.FromKilogramsPerCubicMeter(1000);

        Assert.Throws<ArgumentOutOfRangeException>("volume", () => FloatCapacity.Immersed(Volume.Zero, gram, water));
        Assert.Throws<ArgumentOutOfRangeException>("own", () => FloatCapacity.Immersed(volume, Mass.Zero, water));
        Assert.Throws<ArgumentOutOfRangeException>("immersed", () => FloatCapacity.ShotInAir(-gram, Lead, water));
        Assert.Throws<ArgumentOutOfRangeException>("shot", () => FloatCapacity.ShotInAir(gram, water, water));
    }

    private static Mass Immersed(PublishedRow row)
    {
        var radius = row["d_mm"] / 2;
        var cubicMillimetres = row.Inputs["shape"] == "sphere"
            ? 4.0 / 3 * Math.PI * radius * radius * radius
            : Math.PI * radius * radius * row["length_mm"];
        return FloatCapacity.Immersed(
            Volume.FromCubicMillimeters(cubicMillimetres), Mass.FromGrams(row["float_mass_g"]), WaterOf(row));
    }

    private static Density WaterOf(PublishedRow row) =>
        FreshWater.DensityAt(Temperature.FromDegreesCelsius(row["T_C"]));
}
