using CrewBot.Core.Tests.Published;
using CrewBot.Core.Water;
using CsCheck;
using UnitsNet;

namespace CrewBot.Core.Tests.Water;

public sealed class BlowbackTests
{
    private static readonly Gen<double> AnyCurrent = Make.Log(0.01, 0.5);

    [Theory]
    [PublishedRows("jig_blowback_angle", "jig_blowback_angle_heavy_line")]
    public void WithLineOut_JigInTable_LeansAsPublished(PublishedRow row) => row.Check(Hang(row).AtHole.Degrees);

    [Theory]
    [PublishedRows("jig_blowback_offset", "jig_blowback_offset_heavy_line")]
    public void WithLineOut_JigInTable_DriftsAsPublished(PublishedRow row) => row.Check(Hang(row).Offset.Meters);

    [Theory]
    [PublishedRows("jig_blowback_depth")]
    public void WithLineOut_JigInTable_HangsAsDeepAsPublished(PublishedRow row) => row.Check(Hang(row).Depth.Meters);

    [Theory]
    [PublishedRows("line_reynolds")]
    public void LineReynolds_JigInTable_AgreesWithTable(PublishedRow row) =>
        row.Check(row["U"] * row["d_line_mm"] * 1e-3 * FreshWater.DensityAt(Make.Water(row)).KilogramsPerCubicMeter
            / FreshWater.ViscosityAt(Make.Water(row)).PascalSeconds);

    [Theory]
    [PublishedRows("blowback_angle_at_top", "blowback_offset", "blowback_depth")]
    public void ClosedForm_InputsInTable_AgreesWithTable(PublishedRow row)
    {
        var (angle, offset, depth) = WeightlessLine(row["W_N"], row["D_N"], row["f_N_per_m"], row["s_m"]);

        row.Check(row.Quantity switch { "blowback_offset" => offset, "blowback_depth" => depth, _ => angle });
    }

    // The closed form leaves out drag along the line, which bears only where the line leans far and then adds
    // tension: it stays within 2 % up to 60°.
    [Fact]
    public void WithLineOut_LineAsDenseAsWater_AgreesWithTheClosedForm() =>
        Gen.Select(Make.AnyBody, Gen.Double[0.06, 0.4], Make.Log(0.3, 100), AnyCurrent, Make.AnyWater)
            .Sample((body, millimetres, length, current, water) =>
            {
                var density = FreshWater.DensityAt(water);
                var line = new LineInWater(Length.FromMillimeters(millimetres), density);

                var pressure = density.KilogramsPerCubicMeter / 2 * current * current;
                double Reynolds(double d) =>
                    current * d * density.KilogramsPerCubicMeter / FreshWater.ViscosityAt(water).PascalSeconds;
                var diameter = body.Diameter.Meters;
                var front = Math.PI * diameter * diameter / 4 / (body.SpeedShare * body.SpeedShare);
                var lureDrag = SphereDrag.CoefficientAt(Reynolds(diameter)) * pressure * front;
                var lineDrag = CylinderDrag.CoefficientAt(Reynolds(millimetres / 1e3)) * pressure * millimetres / 1e3;
                var (angle, offset, depth) =
                    WeightlessLine(body.SubmergedWeightIn(density).Newtons, lureDrag, lineDrag, length);

                if (Hang(length, body, line, current, water) is not { } hang)
                {
                    Assert.InRange(angle, 78, 90);
                    return;
                }

                Assert.Equal(angle, hang.AtHole.Degrees, angle < 60 ? 0.02 * angle : 2);
                Assert.Equal(offset, hang.Offset.Meters, 0.02 * length);
                Assert.Equal(depth, hang.Depth.Meters, 0.02 * length);
            });

    [Fact]
    public void AtDepth_DepthFoundWithLineOut_NeedsThatLineOut() =>
        Gen.Select(Make.AnyBody, Make.AnyLine, Make.Log(0.3, 150), AnyCurrent, Make.AnyWater)
            .Sample((body, line, length, current, water) =>
            {
                var hang = Hang(length, body, line, current, water);
                if (hang is null || hang.AtHole.Degrees > 79.9) // nearer the limit only one may answer
                {
                    return;
                }

                var back = Blowback.AtDepth(hang.Depth, body, line, Speed.FromMetersPerSecond(current), water)!;

                // Two integrations of one equation, along the line and along the depth: they share no rounding of
                // steps.
                Assert.Equal(1, back.LineOut.Meters / length, 1e-4);
                Assert.Equal(hang.AtHole.Degrees, back.AtHole.Degrees, 0.01);
                Assert.Equal(hang.Offset.Meters, back.Offset.Meters, 1e-4 * length);
            });

    [Fact]
    public void WithLineOut_MoreCurrent_NeverLeansLess() =>
        Gen.Select(Make.AnyBody, Make.AnyLine, Make.Log(0.3, 150), AnyCurrent, Gen.Double[1, 2], Make.AnyWater)
            .Sample((body, line, length, current, factor, water) =>
                Hang(length, body, line, current * factor, water) is not { } more
                    || more.AtHole.Degrees >= Hang(length, body, line, current, water)!.AtHole.Degrees - 1e-6);

    [Fact]
    public void AtDepth_HeavierOfOneMaterial_NeverLeansMore() =>
        Gen.Select(Make.AnyBody, Gen.Double[1, 3], Make.AnyLine, Make.Log(0.3, 150), AnyCurrent, Make.AnyWater)
            .Sample((body, factor, line, depth, current, water) =>
            {
                var (where, flow) = (Length.FromMeters(depth), Speed.FromMetersPerSecond(current));
                var heavier = body with { Mass = body.Mass * factor };
                return Blowback.AtDepth(where, body, line, flow, water) is not { } light
                    || Blowback.AtDepth(where, heavier, line, flow, water)!.AtHole.Degrees
                        <= light.AtHole.Degrees + 1e-6;
            });

    [Fact]
    public void Both_NoCurrent_HangStraightDown()
    {
        var (body, line, water) = (Make.Body(3, 11340), Make.Line(0.2, 1140), Make.Water(4));

        foreach (var hang in (Blowback?[])[
            Blowback.WithLineOut(Length.FromMeters(7), body, line, Speed.Zero, water),
            Blowback.AtDepth(Length.FromMeters(7), body, line, Speed.Zero, water)])
        {
            Assert.Equal(0, hang!.AtHole.Degrees);
            Assert.Equal(0, hang.Offset.Meters);
            Assert.Equal(7, hang.Depth.Meters);
            Assert.Equal(7, hang.LineOut.Meters);
        }
    }

    [Fact]
    public void AtDepth_TinyJigInStrongCurrent_CannotBeReached() =>
        Assert.Null(Blowback.AtDepth(
            Length.FromMeters(15),
            Make.Body(0.44, 11340),
            Make.Line(0.25, 1140),
            Speed.FromMetersPerSecond(0.5),
            Make.Water(1)));

    [Fact]
    public void WithLineOut_AnswersOnlyUpToTheGreatestLean() =>
        Gen.Select(Make.AnyBody, Make.AnyLine, Make.Log(0.3, 150), Make.Log(0.1, 1), Make.AnyWater)
            .Sample((body, line, length, current, water) =>
                Hang(length, body, line, current, water) is not { } hang
                    || hang.AtHole.Degrees <= Blowback.GreatestLean.Degrees);

    // The soft bait and floating braid that stop at 11.2 m in still water: 20 m of it come up, current or not.
    [Theory]
    [InlineData(0)]
    [InlineData(0.05)]
    public void WithLineOut_FloatingLineLiftsTheLure_HasNoAnswer(double current) =>
        Assert.Null(Hang(20, Make.Body(0.5, 1050), Make.Line(0.3, 970), current, Make.Water(4)));

    [Fact]
    public void Both_BodyThatDoesNotSink_HaveNoAnswer()
    {
        var (body, line, current) = (Make.Body(3, 950), Make.Line(0.2, 1140), Speed.FromMetersPerSecond(0.1));

        Assert.Null(Blowback.WithLineOut(Length.FromMeters(7), body, line, current, Make.Water(4)));
        Assert.Null(Blowback.AtDepth(Length.FromMeters(7), body, line, current, Make.Water(4)));
    }

    [Theory]
    [InlineData(0, 0.1, 4, "lineOut")]
    [InlineData(401, 0.1, 4, "lineOut")]
    [InlineData(7, -0.01, 4, "current")]
    [InlineData(7, 1.01, 4, "current")]
    [InlineData(7, 0.1, -1, "water")]
    public void WithLineOut_OutsideTheRange_Throws(double length, double current, double celsius, string parameter) =>
        Assert.Throws<ArgumentOutOfRangeException>(
            parameter, () => Hang(length, Make.Body(3, 11340), Make.Line(0.2, 1140), current, Make.Water(celsius)));

    [Theory]
    [InlineData(0)]
    [InlineData(201)]
    public void AtDepth_OutsideTheRange_Throws(double depth) =>
        Assert.Throws<ArgumentOutOfRangeException>(nameof(depth), () => Blowback.AtDepth(
            Length.FromMeters(depth), Make.Body(3, 11340), Make.Line(0.2, 1140), Speed.Zero, Make.Water(4)));

    // Where a row names no line density, the table's line is weightless in the water.
    private static Blowback Hang(PublishedRow row) => Hang(
        row["s_m"],
        Make.Body(row),
        Make.Line(row["d_line_mm"], row.Has("rho_line") ? row["rho_line"] : 999.9),
        row["U"],
        Make.Water(row))!;

    private static Blowback? Hang(
        double length, SinkingBody body, LineInWater line, double current, Temperature water) =>
        Blowback.WithLineOut(Length.FromMeters(length), body, line, Speed.FromMetersPerSecond(current), water);

    /// <summary>Weightless line without drag along it: a catenary, its tension constant.</summary>
    private static (double Degrees, double Offset, double Depth) WeightlessLine(
        double weight, double lureDrag, double dragPerMetre, double length)
    {
        var tension = Math.Sqrt((weight * weight) + (lureDrag * lureDrag));
        var (bottom, top) = (lureDrag / weight, (lureDrag / weight) + (dragPerMetre * length / tension));
        return (
            Math.Atan(top) * 180 / Math.PI,
            tension / dragPerMetre * (Math.Sqrt(1 + (top * top)) - Math.Sqrt(1 + (bottom * bottom))),
            tension / dragPerMetre * (Math.Asinh(top) - Math.Asinh(bottom)));
    }
}
