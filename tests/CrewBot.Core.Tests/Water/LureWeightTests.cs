using CrewBot.Core.Water;
using CsCheck;
using UnitsNet;

namespace CrewBot.Core.Tests.Water;

public sealed class LureWeightTests
{
    private static readonly Density Lead = Density.FromKilogramsPerCubicMeter(11340);

    private static readonly Mass[] Ladder =
        [.. new[] { 64.0, 32, 16, 8, 4, 2, 1 }.Select(share => Mass.FromOunces(1 / share))];

    // 1/16 oz of lead on 0.20 mm nylon takes 12.3 s to 10 m at 4 °C (table of falls with line), so 12 s asks for the
    // next.
    [Theory]
    [InlineData(13.0, 1.0 / 16)]
    [InlineData(12.0, 1.0 / 8)]
    [InlineData(3.0, null)]
    public void LightestToReach_LeadTo10Metres_IsTheFirstThatIsQuickEnough(double seconds, double? ounces)
    {
        var found = LureWeight.LightestToReach(
            Ladder, Lead, 1, Make.Line(0.2, 1140), Length.FromMeters(10), Duration.FromSeconds(seconds), Make.Water(4));

        Assert.Equal(ounces, found?.Ounces);
    }

    // 1/8 oz of lead with 10 m of 0.20 mm line out in 0.1 m/s leans 39° and hangs 9.14 m deep (table of blow-back).
    [Theory]
    [InlineData(40, 1.0 / 8)]
    [InlineData(38, 1.0 / 4)]
    [InlineData(1, null)]
    public void LightestToHold_LeadInACurrent_IsTheFirstThatLeansLittleEnough(double degrees, double? ounces)
    {
        var found = LureWeight.LightestToHold(
            Ladder,
            Lead,
            1,
            Make.Line(0.2, 999.9),
            Length.FromMeters(9.138),
            Speed.FromMetersPerSecond(0.1),
            Angle.FromDegrees(degrees),
            Make.Water(4));

        Assert.Equal(ounces, found?.Ounces);
    }

    // Most are told apart without the whole fall; within 1 % of the limit its own steps of 0.3 % decide.
    [Fact]
    public void LightestToReach_OneLure_IsFoundExactlyWhenItsFallIsQuickEnough() =>
        Gen.Select(Make.AnyBody, Make.AnyLine.Null(), Make.Log(0.3, 150), Gen.Double[0.5, 2], Make.AnyWater)
            .Where((_, _, _, share, _) => Math.Abs(share - 1) > 0.01)
            .Sample((body, line, depth, share, water) =>
            {
                var fall = Drop.To(Length.FromMeters(depth), body, line, water);
                var within = Duration.FromSeconds(share * (fall?.Time.Seconds ?? 60));
                var found = LureWeight.LightestToReach(
                    [body.Mass], body.Density, body.SpeedShare, line, Length.FromMeters(depth), within, water);

                return found is not null == (fall is not null && share > 1);
            });

    [Fact]
    public void LightestToReach_Deeper_IsNeverLighter() =>
        Gen.Select(Make.AnyLine, Make.Log(1, 60), Gen.Double[1, 2], Gen.Double[3, 60], Make.AnyWater)
            .Sample((line, depth, factor, seconds, water) =>
            {
                Mass? Find(double metres) => LureWeight.LightestToReach(
                    Ladder, Lead, 0.6, line, Length.FromMeters(metres), Duration.FromSeconds(seconds), water);

                return Find(depth * factor) is not { } deeper || Find(depth)!.Value.Grams <= deeper.Grams;
            });

    [Fact]
    public void LightestToHold_MoreCurrent_IsNeverLighter() =>
        Gen.Select(Make.AnyLine, Make.Log(1, 60), Make.Log(0.01, 0.4), Gen.Double[1, 2], Gen.Double[5, 60])
            .Sample((line, depth, current, factor, degrees) =>
            {
                Mass? Find(double metresPerSecond) => LureWeight.LightestToHold(
                    Ladder,
                    Lead,
                    0.6,
                    line,
                    Length.FromMeters(depth),
                    Speed.FromMetersPerSecond(metresPerSecond),
                    Angle.FromDegrees(degrees),
                    Make.Water(1));

                return Find(current * factor) is not { } stronger || Find(current)!.Value.Grams <= stronger.Grams;
            });

    [Fact]
    public void LightestToReach_LadderThatDoesNotRise_Throws() =>
        Assert.Throws<ArgumentException>("ladder", () => LureWeight.LightestToReach(
            [Mass.FromGrams(3), Mass.FromGrams(3)],
            Lead,
            1,
            null,
            Length.FromMeters(5),
            Duration.FromSeconds(9),
            Make.Water(4)));

    // Diameters from the table of spheres: 1/8 oz is 8.4194 mm in lead and 7.3565 mm in a tungsten alloy of 17.0 g/cm³.
    [Fact]
    public void MaterialComparison_LeadAgainstTungsten_GivesTheTablesSizes()
    {
        var tungsten = Density.FromKilogramsPerCubicMeter(17000);
        var comparison = new MaterialComparison(Lead, tungsten, Mass.FromOunces(1.0 / 8));

        Assert.Equal(8.4194, comparison.UsualDiameter.Millimeters, 0.001 * 8.4194);
        Assert.Equal(7.3565, comparison.OtherDiameter.Millimeters, 0.001 * 7.3565);
        Assert.Equal(17.0 / 11.34 / 8, comparison.OtherMassAtSameSize.Ounces, 1e-9);
        Assert.Equal(
            comparison.UsualDiameter.Millimeters,
            new SinkingBody(comparison.OtherMassAtSameSize, comparison.Other).Diameter.Millimeters,
            1e-9);
    }

    [Fact]
    public void MaterialComparison_DensityOutOfRange_Throws() =>
        Assert.Throws<ArgumentOutOfRangeException>(() =>
            new MaterialComparison(Lead, Density.FromKilogramsPerCubicMeter(30000), Mass.FromGrams(3)));
}
