using CrewBot.Chat.Commands;

namespace CrewBot.Chat.Tests.Weather;

/// <summary>Charts and bands: US National Weather Service and Environment Canada, both of 2001.</summary>
public sealed class ShowChillTests(ChatFixture chat)
{
    [Theory]
    [InlineData("air:0F wind:15mph", "-19 °F")]
    [InlineData("air:30F wind:10mph", "21 °F")]
    [InlineData("air:-10F wind:30mph", "-39 °F")]
    [InlineData("air:-20C wind:30km/h", ": -33, as if")]
    [InlineData("air:-40C wind:80km/h", ": -67, as if")]
    [InlineData("air:0C wind:5km/h", ": -2, as if")]
    public async Task Chill_OfTheCharts_IsWhatTheyPrint(string asked, string says)
    {
        var reply = await chat.SayAsync($"/weather chill {asked}");

        Assert.Contains(reply.Lines, line => line.Contains(says, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("air:-15C wind:30km/h", "is not likely soon")] // -27: low
    [InlineData("air:-16C wind:30km/h", "can freeze in 26 min")] // -27: low, the formula 26.7
    [InlineData("air:-17C wind:30km/h", "can freeze in 10 min")] // -29: 10 to 30 min, the formula longer
    [InlineData("air:-25C wind:40km/h", "can freeze in 5 min")] // -41: 5 to 10 min, the formula 8.91
    [InlineData("air:-25C wind:30km/h", "can freeze in 9 min")] // -39: 10 to 30 min, the formula 9.99
    [InlineData("air:-35C wind:50km/h", "in under 2 min")] // -55: under 2 min, the formula 4.0
    public async Task Chill_BandAndFormula_GiveTheShorterRoundedDown(string asked, string says)
    {
        var reply = await chat.SayAsync($"/weather chill {asked}");

        Assert.Contains(says, reply.Headline, StringComparison.Ordinal);
        Assert.Contains(reply.Cautions, line => line.Contains("weather service", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Chill_MetricCrew_ReadsTheCanadianFormFirst()
    {
        Assert.StartsWith("Canadian", (await chat.SayAsync("/weather chill air:-20 wind:30", CrewUnits.Metric)).Lines[0], StringComparison.Ordinal);
        Assert.StartsWith("US", (await chat.SayAsync("/weather chill air:-4 wind:19")).Lines[0], StringComparison.Ordinal);
    }

    [Fact]
    public async Task Chill_Calm_GivesTheAirItself() => Assert.Contains(
        "US form (National Weather Service, 2001): 5 °F, the air itself: it is for winds from 3 mph.",
        (await chat.SayAsync("/weather chill air:5F wind:2mph")).Lines);

    [Theory]
    [InlineData("/weather chill air:60F wind:10mph", "air: '60F' is outside -76 °F (-60 °C) to 50 °F (10 °C). Give degrees with C or F, such as 10F or -12C.")]
    [InlineData("/weather chill air:10F wind:10lb", "wind: '10lb' is a weight, not a wind. Give mph, km/h, m/s or knots, such as 15mph.")]
    [InlineData("/weather chill air:10F wind:-3mph", "wind: '-3mph' is outside 0 mph (0 km/h) to 134 mph (216 km/h). Give mph, km/h, m/s or knots, such as 15mph.")]
    [InlineData("/weather chill air:10F", "wind is missing. Give mph, km/h, m/s or knots, such as 15mph.")]
    public async Task Chill_BadInput_IsRefusedInALine(string line, string problem) => Assert.Equal(problem, (await chat.SayAsync(line)).Problem);
}
