using CrewBot.Chat.Commands;

namespace CrewBot.Chat.Tests.Derbies;

public sealed class DerbyCommandTests : IAsyncDisposable
{
    private readonly CrewRoom _room = new();

    public ValueTask DisposeAsync() => _room.DisposeAsync();

    // Every bad input has one line that says what is wrong and what to do.
    [Theory]
    [InlineData("/derby create starts:18:00 ends:17:00", "It would end 17:00, before it starts 18:00: give a later end, such as ends:\"tomorrow 02:00\" across midnight.")]
    [InlineData("/derby create ends:banana", "ends: can't read 'banana'. Give 16:00, tomorrow 16:00 or 2027-01-16 16:00.")]
    [InlineData("/derby create ends:17:00 starts:16:00", "It would be over already at 17:00: give an end to come, such as ends:\"tomorrow 15:00\".")]
    [InlineData("/derby create format:points", "Points and factors go together: give format:points factors:\"walleye 1, perch 2\".")]
    [InlineData("/derby create format:points factors:\"walleye lots\"", "factors: can't read 'walleye lots'. Give species and points, such as walleye 1, perch 2, pike 0.75.")]
    [InlineData("/derby join derby:9", "There is no derby 9 in this crew. /derby rules shows the one that is on.")]
    [InlineData("/derby team team:North", "Basin day has no teams: everybody fishes for themselves.")]
    [InlineData("/derby enter species:perch length:60in", "60 in (152.4 cm) is longer than any yellow perch one expects. If it is right, send it again with confirm:yes.")]
    [InlineData("/derby enter species:perch length:7.9in", "7.75 in is under the minimum of 8 in in Basin day.")]
    [InlineData("/derby enter species:burbot length:24in", "A burbot does not count in Basin day: only walleye, yellow perch.")]
    [InlineData("/derby enter species:walleye", "No length in that. Give it with its unit, such as length:22.5in")]
    [InlineData("/derby enter walleye 22½ released", "No length in that. Give it with its unit, such as length:22.5in")]
    [InlineData("/derby enter species:walleye length:20in when:\"3 h ago\"", "Caught at 17:00, but Basin day counts from 19:00 to 23:00.")]
    [InlineData("/derby enter catch:99", "There is no #99 in this crew's log. /catch list shows the newest.")]
    [InlineData("/derby enter catch:1", "#1 is in Basin day already, as entry 1.")]
    [InlineData("/derby saw entry:1", "Nobody can be the witness of their own fish: whoever stood beside you taps I saw it.")]
    [InlineData("/derby saw entry:9", "There is no entry 9 in Basin day. /derby rulings and /derby angler show numbers.")]
    [InlineData("/derby protest entry:1 reason:doubt", "Entry 1 is your own: /derby leave entry:1 takes it back.")]
    [InlineData("/derby penalty entry:1 length:0.3in reason:late", "A penalty is taken in steps of 0.25 in: 0.3 in is none, 0.25 in would be.")]
    [InlineData("/derby rulings entry:1 ruling:refuse", "A refusal needs its reason, such as /derby rulings entry:1 ruling:refuse reason:\"no one saw it\"")]
    [InlineData("/derby rulings entry:1", "An entry and a ruling go together, such as entry:4 ruling:accept")]
    [InlineData("/derby angler person:Anna", "'Anna' is not in Basin day. Nearest: Ana.")]
    public async Task Say_BadInput_IsRefusedInOneLine(string line, string problem)
    {
        await StartAsync();

        Assert.Equal(problem, (await _room.SayAsync(line)).Problem);
    }

    [Fact]
    public async Task Enter_NotJoined_OffersToJoin()
    {
        await StartAsync();

        var reply = await _room.SayAsync("/derby enter species:walleye length:20in", "Bo", Role.Member);

        Assert.Equal("You are not in Basin day yet: say /derby join, then enter it again.", reply.Problem);
        Assert.Equal("/derby join derby:1", Assert.Single(reply.Actions).Command);
    }

    [Fact]
    public async Task Enter_ByAnotherCrew_FindsNoDerby()
    {
        await StartAsync();

        Assert.Equal(
            "This crew has no derby yet: a steward sets one up with /derby create.",
            (await _room.SayAsync("/derby enter species:walleye length:20in", crew: "spruce")).Problem);
    }

    [Fact]
    public async Task Create_ByAMember_IsRefused() =>
        Assert.NotNull((await _room.SayAsync("/derby create", "Bo", Role.Member)).Problem);

    [Fact]
    public async Task Enter_SamePhotoUnderAnotherSignature_IsNoticed()
    {
        await StartAsync();
        await _room.SayAsync("/derby enter species:walleye length:20in photo:https://photos.example/1.jpg?sig=a");

        var reply = await _room.SayAsync("/derby enter species:walleye length:21in photo:https://photos.example/1.jpg?sig=b");

        Assert.Equal("That photo is in Basin day already, with entry 2. If it is another fish, correct the photo with /catch edit.", reply.Problem);
    }

    [Fact]
    public async Task Enter_DeliveredTwice_IsOneEntry()
    {
        await StartAsync();
        var first = await _room.SayAsync("/derby enter species:walleye length:20in", id: "again");
        var second = await _room.SayAsync("/derby enter species:walleye length:20in", id: "again");

        Assert.Equal(ReplyJson.Write(first), ReplyJson.Write(second));
        Assert.Equal(2, (await _room.SayAsync("/derby angler")).Lines.Count);
    }

    [Fact]
    public async Task Log_FishThatQualifies_OffersToEnterIt()
    {
        await StartAsync();

        Assert.Contains((await _room.SayAsync("/catch log species:walleye length:21in")).Actions, action => action.Command == "/derby enter catch:2 derby:1");
        Assert.DoesNotContain((await _room.SayAsync("/catch log species:burbot length:21in")).Actions, action => action.Path == "derby enter");
        Assert.DoesNotContain((await _room.SayAsync("/catch log species:walleye length:21in", "Bo")).Actions, action => action.Path == "derby enter");
    }

    [Fact]
    public async Task Void_EnteredCatch_LeavesTheStandings()
    {
        await StartAsync();
        await _room.SayAsync("/derby saw entry:1", "Bo");
        Assert.Equal("1. Ana 20.5 in: walleye 20.5 in", (await _room.SayAsync("/derby standings")).Lines[0]);

        await _room.SayAsync("/catch void catch:1");

        Assert.Equal("No fish counts yet.", (await _room.SayAsync("/derby standings")).Lines[0]);
    }

    [Fact]
    public async Task Reopen_ClosedDerby_TakesEntriesAgain()
    {
        await StartAsync();
        await _room.SayAsync("/derby close");
        Assert.Equal("Basin day is closed: ask a steward to reopen it.", (await _room.SayAsync("/derby enter species:walleye length:20in")).Problem);

        await _room.SayAsync("/derby reopen");

        Assert.Null((await _room.SayAsync("/derby enter species:walleye length:20in")).Problem);
    }

    [Fact]
    public async Task Standings_OfTeams_SumTheirMembers()
    {
        await _room.SayAsync("/derby create name:Teams teams:sum evidence:\"own word\"");
        Assert.NotNull((await _room.SayAsync("/derby join")).Problem);
        foreach (var (angler, team, length) in ((string, string, string)[])[("Ana", "North", "20in"), ("Bo", "North", "18in"), ("Cy", "South", "30in")])
        {
            await _room.SayAsync($"/derby join team:{team}", angler);
            await _room.SayAsync($"/derby enter species:walleye length:{length}", angler);
        }

        Assert.Equal("1. North 38 in: walleye 20 in, walleye 18 in", (await _room.SayAsync("/derby standings")).Lines[0]);
        await _room.SayAsync("/derby team team:South", "Ana");
        Assert.Equal("1. South 50 in: walleye 30 in, walleye 20 in", (await _room.SayAsync("/derby standings")).Lines[0]);
    }

    // A derby across midnight, in the night in which clocks go forward: 02:30 does not exist, and five hours pass from 22:00 to 04:00.
    [Fact]
    public async Task Create_AcrossMidnightAndSummerTime_CountsByInstants()
    {
        await _room.SayAsync("/crew setup zone:America/Winnipeg");
        _room.Now = new DateTimeOffset(2027, 3, 13, 22, 0, 0, TimeSpan.FromHours(-6));
        await _room.SayAsync("/derby create name:Night ends:\"tomorrow 04:00\" evidence:\"own word\" grace:0");
        await _room.SayAsync("/derby join");
        _room.Now += TimeSpan.FromHours(5);

        Assert.Null((await _room.SayAsync("/derby enter species:walleye length:20in")).Problem);
        _room.Now += TimeSpan.FromMinutes(1);
        Assert.Equal(
            "Caught at 04:01, but Night counts from Sat 13 Mar 22:00 to 04:00.", (await _room.SayAsync("/derby enter species:walleye length:21in")).Problem);
    }

    private async Task StartAsync()
    {
        _room.Now = new DateTimeOffset(2027, 1, 16, 19, 0, 0, TimeSpan.Zero);
        await _room.SayAsync("/derby create name:\"Basin day\" ends:23:00 species:\"walleye, perch\" minimum:8in");
        await _room.SayAsync("/derby join");
        _room.Now += TimeSpan.FromHours(1);
        await _room.SayAsync("/derby enter species:walleye length:20.5in");
    }
}
