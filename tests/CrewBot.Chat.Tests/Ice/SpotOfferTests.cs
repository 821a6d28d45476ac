using CrewBot.Chat.Commands;
using CrewBot.Chat.Tests.Trips;

namespace CrewBot.Chat.Tests.Ice;

/// <summary>A spot misspelt: the nearest that the crew has is offered, and what was measured at another never answers for it.</summary>
public sealed class SpotOfferTests : IAsyncDisposable
{
    private readonly CrewRoom _room = new();

    public ValueTask DisposeAsync() => _room.DisposeAsync();

    [Theory]
    [InlineData("/ice carry water:\"Loon Basin\" people:2 spot:\"nroth bay\"")]
    [InlineData("/trip load spot:\"nroth bay\"")]
    public async Task Carry_SpotMisspelt_OffersTheNearestMeasured(string line)
    {
        await MeasuredAsync();

        var reply = await _room.SayAsync(line);

        Assert.Equal("'nroth bay' is no spot that this crew knows on Loon Basin. Nearest: north bay.", reply.Lines[0]);
        Assert.DoesNotContain(reply.Lines, shown => shown.Contains("Measured: least", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("/ice carry water:\"Loon Basin\" people:2 spot:\"North Bay\"")]
    [InlineData("/ice carry water:\"Loon Basin\" people:2 spot:\"old quarry\"")]
    [InlineData("/ice carry water:\"Loon Basin\" people:2")]
    public async Task Carry_SpotThatIsThereOrNearNone_OffersNothing(string line)
    {
        await MeasuredAsync();

        Assert.DoesNotContain((await _room.SayAsync(line)).Lines, shown => shown.Contains("Nearest:", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Carry_WhereNobodyMeasured_DoesNotSayThatItWas()
    {
        await MeasuredAsync();

        Assert.Contains(
            "No measurement of today at that spot: no answer. /ice report files a measurement.",
            (await _room.SayAsync("/ice carry water:\"Loon Basin\" people:2 spot:\"old quarry\"")).Lines);
    }

    [Fact]
    public async Task Carry_SpotOfTheCrewMisspelt_OffersIt()
    {
        await _room.SayAsync("crew setup water:\"Loon Basin\" spot:\"north hump\"");

        Assert.EndsWith("Nearest: north hump.", (await _room.SayAsync("/ice carry people:2 spot:\"north hmup\"")).Lines[0], StringComparison.Ordinal);
    }

    [Fact]
    public async Task Report_SpotOneSlipOff_IsFiledAndItsCorrectionOffered()
    {
        await MeasuredAsync();

        var reply = await _room.SayAsync("/ice report water:\"Loon Basin\" spot:\"nroth bay\" clear:5in");

        const string Correction = "/ice correct report:2 spot:\"north bay\" reason:misspelt";
        Assert.Contains($"'nroth bay' is a new spot on Loon Basin. If you meant north bay: {Correction}", reply.Lines);
        Assert.Equal("Meant north bay", reply.Actions[0].Label);
        Assert.Equal(Correction, CommandLine.Write(reply.Actions[0].Path, reply.Actions[0].Options));
        Assert.Equal("Ice report #2 corrected: Loon Basin, north bay", (await _room.SayAsync(Correction)).Headline);
    }

    [Theory]
    [InlineData("south bay", "north bay")]
    [InlineData("hole 2", "hole 1")]
    [InlineData("bar", "bay")]
    [InlineData("The North-Bay", "north bay")]
    public async Task Report_SpotThatMayWellBeAnother_IsFiledAsItIs(string spot, string known)
    {
        await _room.SayAsync($"crew setup water:\"Loon Basin\" spot:\"{known}\"");

        var reply = await _room.SayAsync($"/ice report water:\"Loon Basin\" spot:\"{spot}\" clear:5in");

        Assert.Null(reply.Problem);
        Assert.DoesNotContain(reply.Lines, line => line.Contains("new spot", StringComparison.Ordinal));
    }

    private async Task MeasuredAsync()
    {
        await _room.PlanTripAsync();
        await _room.SayAsync("/ice report water:\"Loon Basin\" spot:\"north bay\" clear:6in");
    }
}
