using CrewBot.Chat.Commands;
using CrewBot.Core.Derbies.Ledger;
using CrewBot.Storage.Derbies;

namespace CrewBot.Chat.Tests.Derbies;

/// <summary>Who rules on what, and until when.</summary>
public sealed class StewardTests : IAsyncDisposable
{
    private static readonly DateTimeOffset Morning = new(2027, 1, 16, 14, 0, 0, TimeSpan.Zero);

    private readonly CrewRoom _room = new() { Now = Morning };

    public ValueTask DisposeAsync() => _room.DisposeAsync();

    // The derby ends at 16:00, word is taken until 16:15, protests are heard until 17:15.
    [Theory]
    [InlineData("17:15:00", null)]
    [InlineData("17:15:01", "Protests in Day were heard until 17:15.")]
    public async Task Protest_AtTheEndOfItsTime_IsHeardToTheLastInstant(string at, string? problem)
    {
        await StartAsync();
        _room.Now = new DateTimeOffset(Morning.Date, TimeSpan.Zero) + TimeSpan.Parse(at, System.Globalization.CultureInfo.InvariantCulture);

        Assert.Equal(problem, (await _room.SayAsync("/derby protest entry:1 reason:doubt", "Bo", Role.Member)).Problem);
    }

    [Fact]
    public async Task Protest_AfterTheClose_IsHeardAndRuledOn()
    {
        await StartAsync();
        await _room.SayAsync("/derby saw entry:1", "Bo");
        _room.Now = Morning.AddHours(2.5);
        await _room.SayAsync("/derby close");
        Assert.Null((await _room.SayAsync("/derby protest entry:1 reason:doubt", "Bo")).Problem);
        Assert.Equal("No fish counts yet.", (await _room.SayAsync("/derby standings")).Lines[0]);

        Assert.Null((await _room.SayAsync("/derby rulings entry:1 ruling:accept", "Bo")).Problem);

        Assert.Equal("1. Ana 20 in: walleye 20 in", (await _room.SayAsync("/derby standings")).Lines[0]);
    }

    [Fact]
    public async Task Rule_AfterTheTimeForProtests_IsRefusedUntilItIsReopened()
    {
        await StartAsync();
        _room.Now = Morning.AddHours(2.5);
        await _room.SayAsync("/derby close");
        _room.Now = Morning.AddHours(4);

        Assert.Equal(
            "Day is closed and the time for protests is over: /derby reopen first.", (await _room.SayAsync("/derby rulings entry:1 ruling:accept")).Problem);
        await _room.SayAsync("/derby reopen");
        Assert.Null((await _room.SayAsync("/derby rulings entry:1 ruling:accept")).Problem);
    }

    [Fact]
    public async Task Rule_LoneStewardsOwnFish_IsTheirsToRuleAndOnTheRecord()
    {
        await StartAsync();

        var reply = await _room.SayAsync("/derby rulings entry:1 ruling:accept");

        Assert.Equal("Accepted: entry 1, Ana's walleye of 20 in", reply.Headline);
        Assert.Equal(["Ruled by Ana; it is on the record."], reply.Lines);
    }

    [Theory]
    [InlineData("/derby rulings entry:1 ruling:accept")]
    [InlineData("/derby amend entry:1 length:25in reason:misread")]
    [InlineData("/derby penalty entry:1 length:1in reason:late")]
    public async Task Rule_StewardsOwnFishWhereThereIsAnother_IsTheOthersToRule(string line)
    {
        await StartAsync();
        await _room.SayAsync("/crew setup person:Ana role:steward");
        await _room.SayAsync("/crew setup person:Bo role:steward");

        Assert.Equal("Entry 1 is your own: Bo decides about it.", (await _room.SayAsync(line)).Problem);
        Assert.Null((await _room.SayAsync(line, "Bo", Role.Member)).Problem);
    }

    [Fact]
    public async Task Amend_WithItsReason_PutsBothOnTheRecord()
    {
        await StartAsync();
        await _room.SayAsync("/derby amend entry:1 length:25in reason:misread");

        IReadOnlyList<LedgerEvent> record = [];
        await _room.WriteAsync(async session => record = await new LedgerRepository(session).EventsAsync(1));
        var amended = Assert.Single(record.OfType<Amended>());
        Assert.Equal((25m, "misread"), (amended.Measured.Number, amended.Reason));
    }

    [Fact]
    public async Task Enter_AfterTheGraceTime_WaitsForASteward()
    {
        await StartAsync();
        _room.Now = Morning.AddHours(2.5);
        var late = await _room.SayAsync("/derby enter species:walleye length:25in when:15:50");
        Assert.Contains("Word of it came after the grace time: a steward decides.", late.Lines);
        await _room.SayAsync("/derby saw entry:2", "Bo");
        Assert.Equal("No fish counts yet.", (await _room.SayAsync("/derby standings")).Lines[0]);

        await _room.SayAsync("/derby rulings entry:2 ruling:accept");

        Assert.Equal("1. Ana 25 in: walleye 25 in", (await _room.SayAsync("/derby standings")).Lines[0]);
    }

    [Fact]
    public async Task Edit_CatchThatIsInADerby_LeavesTheEntryAndSaysWhoChangesIt()
    {
        await StartAsync();
        await _room.SayAsync("/derby saw entry:1", "Bo");

        var reply = await _room.SayAsync("/catch edit catch:1 length:30in");

        Assert.Contains("In derby 1 it stays as it was entered: a steward changes it with /derby amend entry:1.", reply.Lines);
        Assert.Equal("1. Ana 20 in: walleye 20 in", (await _room.SayAsync("/derby standings")).Lines[0]);
    }

    private async Task StartAsync()
    {
        await _room.SayAsync("/derby create name:Day ends:16:00");
        await _room.SayAsync("/derby join");
        await _room.SayAsync("/derby join", "Bo", Role.Member);
        _room.Now = Morning.AddHours(1);
        await _room.SayAsync("/derby enter species:walleye length:20in");
        _room.Now = Morning.AddHours(2);
    }
}
