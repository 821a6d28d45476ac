namespace CrewBot.Chat.Tests.Trips;

/// <summary>The day's frame and the pocket card.</summary>
public sealed class TripDayFrameTests : IAsyncDisposable
{
    private readonly CrewRoom _room = new();

    // US National Weather Service chart (2001): 0 °F and 15 mph feel like -19 °F, 10 °F and 15 mph like -7 °F.
    [Fact]
    public async Task Day_ForecastOfTwoHours_GivesTheChartsWindChill()
    {
        await PlanAsync();

        var reply = await _room.SayAsync("trip day forecast:\"7:00 0F 15mph, 9:00 10F 15mph\"");

        var cold = Assert.Single(reply.Lines, line => line.StartsWith("Wind chill, °F:", StringComparison.Ordinal));
        Assert.Contains("07 h -19,", cold, StringComparison.Ordinal);
        Assert.Contains("09 h -7,", cold, StringComparison.Ordinal);
        Assert.EndsWith("16 h -7.", cold, StringComparison.Ordinal);
        Assert.Contains("Bare skin can freeze", Assert.Single(reply.Cautions), StringComparison.Ordinal);
    }

    // 9000 BTU/h for 9 h at 21 548 BTU/lb (supplier's data sheet): 3.76 lb.
    [Fact]
    public async Task Day_HeaterBrought_GivesItsFuel()
    {
        await PlanAsync();
        await _room.SayAsync("trip bring item:\"small heater\"");

        Assert.Contains((await _room.SayAsync("trip day")).Lines, line => line.StartsWith("Fuel: 3.8 lb (1.7 kg) of propane for 1 heater", StringComparison.Ordinal));
    }

    // Winnipeg, 17 January: sunset 17:01, civil dusk 17:36, both within two minutes (NOAA solar calculator, from memory).
    [Fact]
    public async Task Day_WaterHasAPlace_GivesTheLight()
    {
        await PlanAsync();
        await _room.SayAsync("crew setup water:\"Loon Basin\" at:\"49.9, -97.1\"");

        Assert.Matches("^Light: sun 08:[12][0-9] to 1[67]:[0-9]{2}, dark from 17:3[0-9] \\(civil dusk\\)\\.$", (await _room.SayAsync("trip day")).Lines[0]);
    }

    [Theory]
    [InlineData("trip day forecast:\"cold and windy\"", "can't read 'cold'")]
    [InlineData("trip day forecast:\"07:00 -20C\"", "can't read '07:00 -20C'")]
    [InlineData("trip day forecast:\"25:00 -20C 10mph\"", "can't read '25:00 -20C 10mph'")]
    [InlineData("trip day forecast:\"07:00 -20C 900mph\"", "can't read '07:00 -20C 900mph'")]
    public async Task Day_ForecastThatCantBeRead_IsRefusedInOneLine(string line, string part)
    {
        await PlanAsync();

        var reply = await _room.SayAsync(line);

        Assert.Contains(part, reply.Problem, StringComparison.Ordinal);
        Assert.DoesNotContain('\n', reply.Problem!);
    }

    [Fact]
    public async Task Pack_EverythingIsKnown_FitsOneScreen()
    {
        await PlanAsync();
        await _room.SayAsync("crew setup water:\"Loon Basin\" at:\"49.9, -97.1\" emergency:112");
        await _room.SayAsync("trip change species:walleye depth:24ft place:\"the north landing\"");
        await _room.SayAsync("trip bring item:hub");
        await _room.SayAsync("trip seats");

        var card = await _room.SayAsync("trip pack");

        Assert.True(card.Lines.Count <= 8);
        Assert.StartsWith("Lines up 15:00, off the ice 16:00; dark from 17:3", card.Lines[0], StringComparison.Ordinal);
        Assert.Equal("With you: 1 hub; you sit in Ana's hub.", card.Lines[1]);
        Assert.StartsWith("Missing: 1 pair of ice picks,", card.Lines[2], StringComparison.Ordinal);
        Assert.EndsWith("Nobody brings them: do not go out without.", card.Lines[2], StringComparison.Ordinal);
        Assert.Contains(card.Lines, line => line.StartsWith("Walleye: ", StringComparison.Ordinal));
        Assert.Contains(card.Lines, line => line.StartsWith("Emergency: 112.", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Pack_NotOnTheTrip_IsRefused()
    {
        await PlanAsync();

        Assert.Contains("You are not on trip 1 (Loon Basin, ", (await _room.SayAsync("trip pack", "Bo")).Problem, StringComparison.Ordinal);
    }

    public ValueTask DisposeAsync() => _room.DisposeAsync();

    private async Task PlanAsync()
    {
        await _room.SayAsync("crew setup zone:America/Winnipeg water:\"Loon Basin\"");
        Assert.Null((await _room.SayAsync("trip plan water:\"Loon Basin\" meet:\"tomorrow 07:00\"")).Problem);
    }
}
