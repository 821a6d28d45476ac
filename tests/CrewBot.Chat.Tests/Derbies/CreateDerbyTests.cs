using CrewBot.Chat.Commands;

namespace CrewBot.Chat.Tests.Derbies;

/// <summary>A derby without a word about its rules: shown first, set up with a press.</summary>
public sealed class CreateDerbyTests : IAsyncDisposable
{
    private readonly CrewRoom _room = new() { Now = new DateTimeOffset(2027, 1, 16, 14, 0, 0, TimeSpan.Zero) };

    public ValueTask DisposeAsync() => _room.DisposeAsync();

    [Fact]
    public async Task Create_WithoutOptions_ShowsTheUsualRulesAndSetsNothingUp()
    {
        await _room.SayAsync("/crew setup zone:America/Winnipeg");

        var offer = await _room.SayAsync("/derby create");

        Assert.Equal("Derby of 16 January, with the usual rules? Nothing is set up yet", offer.Headline);
        Assert.Equal("Time: fish caught from 08:00 to 16:00 count (America/Winnipeg); word of them until 16:15.", offer.Lines[0]);
        Assert.Equal("Score: the total length of your best 3 fish.", offer.Lines[1]);
        Assert.Contains("0.25 in steps", offer.Lines[2], StringComparison.Ordinal);
        Assert.Equal("Fish: every species; kept or released both count.", offer.Lines[3]);
        Assert.StartsWith("Evidence: a crewmate's word.", offer.Lines[4], StringComparison.Ordinal);
        Assert.Equal("This crew has no derby yet: a steward sets one up with /derby create.", (await _room.SayAsync("/derby rules")).Problem);
    }

    [Theory]
    [InlineData("Set it up")]
    [InlineData("Other time or fish")]
    [InlineData("Other scoring")]
    public async Task Create_PressedOrFormSentAsItWas_SetsUpWhatWasShown(string label)
    {
        var offer = await _room.SayAsync("/derby create");
        var action = Assert.Single(offer.Actions, action => action.Label == label);

        var made = await _room.SayAsync(action.Command);

        Assert.Equal("Derby 1, Derby of 16 January, is set up", made.Headline);
        Assert.Equal(offer.Lines, made.Lines);
    }

    [Fact]
    public async Task Create_ByAMetricCrew_OffersItsStep()
    {
        await _room.SayAsync("/crew setup units:metric");

        var scoring = (await _room.SayAsync("/derby create")).Actions.Single(action => action.Label == "Other scoring");

        Assert.Equal("0.5cm", scoring.Options["step"]);
        Assert.Contains("0.5 cm steps", (await _room.SayAsync(scoring.Command)).Lines[2], StringComparison.Ordinal);
    }

    [Fact]
    public async Task Create_ByAMemberWithoutOptions_IsRefused() =>
        Assert.NotNull((await _room.SayAsync("/derby create", "Bo", Role.Member)).Problem);
}
