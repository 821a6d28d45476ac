using CsCheck;

namespace CrewBot.Chat.Tests.Weather;

public sealed class HeatShelterTests(ChatFixture chat)
{
    [Fact]
    public async Task Heat_OfABox_IsWallsAndAirTogether()
    {
        // A box of 2 x 1.77 x 1.52 m has 15 m² of walls and roof: 6.8 W/m²·K and 25 °C are 2550 W (worked from Q = U A ΔT).
        var reply = await chat.SayAsync("/weather heat outside:-15C inside:10C size:2x1.7667x1.5221m");

        var air = 0.33 * 5 * (2 * 1.7667 * 1.5221) * 25;
        Assert.Equal(2550 + air, Figure(reply, "heat.low"), 0.5);
        Assert.Equal(2550 + (2 * air), Figure(reply, "heat.high"), 0.5);
    }

    [Fact]
    public async Task Heat_AHeaterAndItsBottle_AreTheSuppliersFigures()
    {
        var reply = await chat.SayAsync("/weather heat outside:-10F heater:9000BTU/h bottle:1lb");

        // 9000 BTU/h take 0.4177 lb/h; a pound lasts 2.39 h (21 548 BTU/lb, a supplier's data sheet). Shown rounded down.
        Assert.Equal(0.4177 * 0.45359237, Figure(reply, "heat.propane"), 0.0005);
        Assert.Equal(2.39, Figure(reply, "heat.bottle"), 0.005);
        Assert.Contains(reply.Lines, line => line.Contains("1 lb (0.45 kg) lasts 2.3 h", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Heat_SealedShelter_IsDownToLowOxygenAsThePublishedOneIs()
    {
        // 3 kW in 6 m³: about 19.1 min from 20.9 to 18 % (stoichiometry).
        var reply = await chat.SayAsync("/weather heat outside:-10C size:2x2x1.5m heater:3kW");

        Assert.Equal(19.1, Figure(reply, "heat.sealed"), 0.4);
        Assert.Contains(reply.Lines, line => line.StartsWith("Never seal it: without any vent that fire takes this air to 18 % oxygen in 19 min", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Heat_WhatNobodySaid_IsNamedAndEveryAnswerWarnsOfCarbonMonoxide()
    {
        var reply = await chat.SayAsync("/weather heat outside:0F");

        Assert.Contains(reply.Lines, line => line.StartsWith("Assumed: hub, square, 7.3 ft (2.2 m) wide and 6.2 ft (1.9 m) high, one layer of fabric, 50 °F (10 °C) inside, 1 lb", StringComparison.Ordinal));
        Assert.Contains(reply.Cautions, line => line.Contains("CO alarm", StringComparison.Ordinal));
        Assert.Contains(reply.Cautions, line => line.Contains("before anyone sleeps", StringComparison.Ordinal));
    }

    // Ventilation is not negotiable.
    [Fact]
    public async Task Heat_AnyShelter_NeverCallsFreshAirALoss() => await Gen.Select(Gen.Int[-60, 5], Gen.Int[1, 9], Gen.Int[1, 9]).SampleAsync(async (outside, wide, high) =>
    {
        var reply = await chat.SayAsync($"/weather heat outside:{outside}C size:{wide}x{wide}x{high}m");

        Assert.Null(reply.Problem);
        Assert.DoesNotContain([.. reply.Lines, .. reply.Reasons], line => line.Contains("too much", StringComparison.Ordinal) || line.Contains("less air", StringComparison.Ordinal));
        Assert.Contains(reply.Lines, line => line.StartsWith("Never seal it", StringComparison.Ordinal));
    });

    [Theory]
    [InlineData("/weather heat outside:20F inside:10F", "inside: 10 °F (-12 °C) is no warmer than outside. Give more, such as inside:50F.")]
    [InlineData("/weather heat outside:0F shelter:hub size:6x6x6ft", "shelter and size both say how large it is: keep one.")]
    [InlineData("/weather heat outside:0F shelter:\"small heater\"", "shelter: small heater is no shelter whose size is known. Give its sides, such as size:6x6x6.5ft.")]
    [InlineData("/weather heat outside:0F size:6x6", "size: can't read '6x6'. Give length x width x height, such as 6x6x6.5ft or 1.8x1.8x2m.")]
    [InlineData("/weather heat outside:0F size:60x6x6ft", "size: '60ft' is outside 1.6 ft (0.5 m) to 32.8 ft (10 m). Give feet or metres, such as 6ft.")]
    [InlineData("/weather heat outside:0F heater:9000lb", "heater: '9000lb' is a weight, not a heater's rating. Give BTU/h, W or kW, such as 9000BTU/h.")]
    [InlineData("/weather heat outside:0F heater:90", "heater: '90' is outside 1000 BTU/h (0.3 kW) to 102400 BTU/h (30.0 kW). Give BTU/h, W or kW, such as 9000BTU/h.")]
    public async Task Heat_BadInput_IsRefusedInALine(string line, string problem) => Assert.Equal(problem, (await chat.SayAsync(line)).Problem);

    private static double Figure(Chat.Commands.Reply reply, string key) => reply.Figures.Single(figure => figure.Key == key).Value;
}
