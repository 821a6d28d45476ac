using CrewBot.Core.Ice;
using CrewBot.Core.Tests.Published;
using UnitsNet;

namespace CrewBot.Core.Tests.Ice;

public sealed class BearingTests
{
    private const double Used = 3.5;

    // Only A = 3.5 is used. The rows of bolder coefficients hold the arithmetic of the table, and that nobody gets them.
    [Theory]
    [PublishedRows("gold_load")]
    public void Moving_LoadInTable_AsksForNoLessThanTheTable(PublishedRow row)
    {
        var thickness = BearingFormulas.Moving(Mass.FromKilograms(row.Value)).Centimeters;

        Assert.Equal(row["h_cm"] * Math.Sqrt(row["A_kg_cm2"] / Used), thickness, 0.01);
        Assert.True(thickness >= row["h_cm"] - 1e-9);
    }

    [Theory]
    [PublishedRows("gold_thickness")]
    public void Moving_Load_AgreesWithTable(PublishedRow row) =>
        row.Check(BearingFormulas.Moving(Mass.FromKilograms(row["P_kg"])).Centimeters);

    [Theory]
    [PublishedRows("gold_load_white")]
    public void Moving_LoadOfWhiteIce_IsThatOfHalfTheThickness(PublishedRow row)
    {
        var effective = IceSection.Of(IceKind.White, Length.FromCentimeters(row["white_cm"])).Effective;

        Assert.Equal(effective.Centimeters, BearingFormulas.Moving(Mass.FromKilograms(row.Value)).Centimeters, 0.01);
    }

    // 50 lb/in² is where the lowest failures were reported; everything above it is bolder than what is used.
    [Theory]
    [PublishedRows("A_lb_in2_to_kg_cm2")]
    public void Coefficients_Converted_AgreeWithTable(PublishedRow row)
    {
        var metric = row["A_lb_in2"] * Mass.FromPounds(1).Kilograms / Math.Pow(Length.FromInches(1).Centimeters, 2);

        row.Check(metric);
        Assert.True(row["A_lb_in2"] < 50 || Used <= metric);
    }

    [Theory]
    [PublishedRows("smith_thickness")]
    public void Standing_UsUnits_AgreesWithTable(PublishedRow row) =>
        row.Check(BearingFormulas.Standing(Mass.FromShortTons(row["W_short_ton"])).Inches);

    [Theory]
    [PublishedRows("stationary_group_thickness")]
    public void Standing_Metric_AgreesWithTable(PublishedRow row) =>
        row.Check(BearingFormulas.Standing(Mass.FromKilograms(row["total_kg"])).Centimeters);

    [Theory]
    [PublishedRows("effective_thickness")]
    public void Effective_ClearAndWhite_AgreesWithTable(PublishedRow row) => row.Check(new IceSection(
        Length.FromCentimeters(row["clear_cm"]), Length.FromCentimeters(row["white_cm"]), Length.Zero).Effective.Centimeters);

    [Theory]
    [PublishedRows("vehicle_spacing")]
    public void Spacing_OnIce_AgreesWithTable(PublishedRow row) => row.Check(VehicleSpacing.On(Length.FromInches(row["h_in"])).Feet);

    [Theory]
    [PublishedRows("freeboard_bare_ice")]
    public void Freeboard_BareIce_AgreesWithTable(PublishedRow row) =>
        row.Check(FloatingIce.Freeboard(Length.FromCentimeters(row["h_cm"])).Centimeters);

    [Theory]
    [PublishedRows("snow_depth_that_floods")]
    public void SnowThatFloods_OnIce_AgreesWithTable(PublishedRow row) => row.Check(FloatingIce.SnowThatFloods(
        Length.FromCentimeters(row["h_cm"]), Density.FromKilogramsPerCubicMeter(row["rho_snow"])).Centimeters);

    [Theory]
    [PublishedRows("critical_speed_shallow")]
    public void Wave_ShallowWater_AgreesWithTable(PublishedRow row) =>
        row.Check(IceWave.InShallowWater(Length.FromMeters(row["depth_m"])).KilometersPerHour);

    [Theory]
    [PublishedRows("critical_speed_deep")]
    public void Wave_DeepWater_AgreesWithTable(PublishedRow row) => row.Check(IceWave.InDeepWater(
        Length.FromMeters(row["h_m"]), Pressure.FromPascals(row["E_Pa"]), Ratio.FromDecimalFractions(row["nu"])).KilometersPerHour);

    [Theory]
    [PublishedRows("one_ten_one")]
    public void ColdWater_Phases_AreOneTenOne(PublishedRow row) => row.Check(row.Inputs["phase"][0] switch
    {
        'c' => ColdWater.ToControlBreathing.Minutes,
        'u' when row.Unit == "min" => ColdWater.OfUsefulMovement.Minutes,
        _ => ColdWater.UntilUnconscious.Hours,
    });

    [Theory]
    [InlineData(-1)]
    [InlineData(100_001)]
    public void Formulas_ImpossibleLoad_Throw(double kilograms)
    {
        Assert.Throws<ArgumentOutOfRangeException>("load", () => BearingFormulas.Moving(Mass.FromKilograms(kilograms)));
        Assert.Throws<ArgumentOutOfRangeException>("load", () => BearingFormulas.Standing(Mass.FromKilograms(kilograms)));
    }

    [Theory]
    [InlineData(4)]
    [InlineData(-0.01)]
    public void Section_ImpossibleThickness_Throws(double metres) => Assert.Throws<ArgumentOutOfRangeException>(
        "thickness", () => IceSection.Of(IceKind.Clear, Length.FromMeters(metres)));
}
