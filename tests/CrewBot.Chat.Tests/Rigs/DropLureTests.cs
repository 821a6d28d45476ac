using CrewBot.Chat.Commands;

namespace CrewBot.Chat.Tests.Rigs;

/// <summary>The calculations as scripts call them, against published formulas worked by a second program.</summary>
/// <remarks>
/// Water: Tanaka et al. (2001), Metrologia 38, 301–309; IAPWS SR6-08(2011). Sphere: Clift and Gauvin (1971), whose own
/// spread is 2 to 3 %. Line: Glauert and Lighthill (1955). Cylinder: Cheng (2013), J. Hydraul. Eng. 139(6).
/// </remarks>
public sealed class DropLureTests(ChatFixture chat)
{
    [Fact]
    public async Task Say_BareLeadBallAtOneDegree_AgreesWithPublishedWater()
    {
        const string Line = "/rig drop weight:1/8oz material:lead shape:ball depth:30ft water:1C line:none";

        Assert.Equal(999.9017, await FigureAsync(Line, "water.density"), 0.002); // Tanaka et al. (2001), 1 °C
        Assert.Equal(1.7311, await FigureAsync(Line, "water.viscosity"), 0.002 * 1.7311); // SR6-08(2011), 1 °C
        Assert.Equal(8.4194, await FigureAsync(Line, "lure.diameter"), 0.001); // geometry, lead of 11.34 g/cm³
        Assert.Equal(9.144, await FigureAsync(Line, "depth"), 1e-9);
    }

    // Clift and Gauvin at 0 and 4 °C; tolerance 1 %, a third of the correlation's own spread.
    [Theory]
    [InlineData("1/64oz material:lead", "0C", 1.199)]
    [InlineData("1/64oz material:lead", "4C", 1.203)]
    [InlineData("1/16oz material:lead", "0C", 1.513)]
    [InlineData("1/16oz material:lead", "4C", 1.508)]
    [InlineData("1/8oz material:lead", "0C", 1.682)]
    [InlineData("1/8oz material:lead", "4C", 1.673)]
    [InlineData("1oz material:lead", "4C", 2.268)]
    [InlineData("1/32oz density:17", "4C", 1.573)]
    [InlineData("1/8oz density:19", "4C", 2.024)]
    [InlineData("1/4oz density:19.25", "0C", 2.263)]
    public async Task Say_BareBall_SinksAtTheTabulatedSpeed(string lure, string water, double metresPerSecond) => Assert.Equal(
        metresPerSecond,
        await FigureAsync($"/rig drop weight:{lure} shape:ball depth:30ft water:{water} line:none", "settling.speed"),
        0.01 * metresPerSecond);

    // Force balance, 4 °C: m g (1 − ρw/ρ).
    [Theory]
    [InlineData("1/64oz", 3.9609e-3)]
    [InlineData("1/16oz", 15.844e-3)]
    public async Task Say_LeadBall_WeighsWhatTheForceBalanceGives(string weight, double newtons) => Assert.Equal(
        newtons,
        await FigureAsync($"/rig drop weight:{weight} material:lead depth:10m water:4C line:none", "lure.wet-weight"),
        0.001 * newtons);

    // Worked cases of a fall with line, quasi-steady and from rest: 3 %.
    [Theory]
    [InlineData("1/16oz material:lead", "nylon 0.2mm", "10m", "4C", 12.3, 0.5668)]
    [InlineData("1/8oz material:lead", "braid 0.15mm", "15m", "4C", 14.55, 0.7474)]
    [InlineData("1/4oz density:19", "fluorocarbon 0.2mm", "20m", "0C", 14.24, 1.041)]
    public async Task Say_BallWithLineBehindIt_FallsAsInTheWorkedCases(
        string lure, string line, string depth, string water, double seconds, double endSpeed)
    {
        var command = $"/rig drop weight:{lure} depth:{depth} water:{water} line:\"{line}\"";

        Assert.Equal(seconds, await FigureAsync(command, "drop.time"), 0.03 * seconds);
        Assert.Equal(endSpeed, await FigureAsync(command, "drop.end-speed"), 0.03 * endSpeed);
    }

    // The same without line: 6.6 s instead of 12.3.
    [Fact]
    public async Task Say_BallWithoutLine_IsDownInHalfTheTime() => Assert.Equal(
        6.6, await FigureAsync("/rig drop weight:1/16oz material:lead depth:10m water:4C line:none", "drop.time"), 0.2);

    // Worked cases of a line in a current, the first two on weightless line (nylon and braid nearly are): 2 %. The
    // last depth follows from angle and offset of the case: a line of 10 m that leans less hangs deeper than 9.14 m.
    [Theory]
    [InlineData("1/8oz material:lead", "nylon 0.2mm", "10m", "4C", "0.1m/s", 38.98, 3.56, 9.138)]
    [InlineData("1/4oz density:19", "braid 0.15mm", "8m", "0C", "0.05m/s", 6.118, 0.431, 7.985)]
    [InlineData("1/8oz material:lead", "fluorocarbon 0.2mm", "10m", "4C", "0.1m/s", 36.84, 3.432, 9.2)]
    public async Task Say_LineOutInACurrent_HangsAsInTheWorkedCases(
        string lure, string line, string lineOut, string water, string current, double degrees, double offset, double depth)
    {
        var command = $"/rig drop weight:{lure} line:\"{line}\" line-out:{lineOut} water:{water} current:{current}";

        Assert.Equal(degrees, await FigureAsync(command, "blowback.angle"), 0.02 * degrees);
        Assert.Equal(offset, await FigureAsync(command, "blowback.offset"), 0.02 * offset);
        Assert.Equal(depth, await FigureAsync(command, "blowback.depth"), 0.02 * depth);
    }

    // Equal volume: 120 m × (0.22 / 0.18)².
    [Fact]
    public async Task Say_SpoolOfThinnerLine_TakesMoreOfIt() => Assert.Equal(
        179.26, await FigureAsync("/line spool capacity:\"120m 0.22mm\" new:0.18mm", "spool.length"), 0.01);

    // Common practice, by public charts: 6-lb braid is about as thick as 2-lb nylon (both 0.005 in).
    [Fact]
    public async Task Say_SixPoundBraid_IsAsThickAsTwoPoundNylon() => Assert.Equal(
        2, await FigureAsync("/line compare line:\"braid 6lb\"", "line.mono-equivalent-test"), 0.2);

    private async Task<double> FigureAsync(string line, string key)
    {
        var reply = await chat.SayAsync(line, CrewUnits.Customary);
        Assert.Null(reply.Problem);
        return Assert.Single(reply.Figures, figure => figure.Key == key).Value;
    }
}
