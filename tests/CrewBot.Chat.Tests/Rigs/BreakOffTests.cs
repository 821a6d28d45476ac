using CrewBot.Chat.Commands;

namespace CrewBot.Chat.Tests.Rigs;

public sealed class BreakOffTests : IAsyncDisposable
{
    private const string Measured = "rig broke place:join end:curl knot:\"double uni\" line:\"braid 10lb\" pull:";
    private const string Check = "rig check mainline:\"braid 6lb\" leader:\"fluorocarbon 6lb\" join:\"double uni\" knot:palomar";

    private readonly CrewRoom _room = new();

    [Fact]
    public async Task Broke_InACrew_IsLoggedAndCounted()
    {
        var first = await _room.SayAsync("rig broke place:join end:curl");
        var second = await _room.SayAsync("rig broke place:join end:curl", member: "Bo");

        Assert.Equal("Logged as break-off 1: the first such of your crew. Give knot, line and pull too, and such entries tell what your knots hold.", first.Lines[2]);
        Assert.StartsWith("Logged as break-off 2: your crew has seen 2 such.", second.Lines[2], StringComparison.Ordinal);
        Assert.Contains("break-offs: 1", (await _room.SayAsync("crew privacy", member: "Bo")).Lines[0], StringComparison.Ordinal);
    }

    [Fact]
    public async Task Broke_DeliveredTwiceOrOnlyAsked_IsLoggedOnce()
    {
        var first = await _room.SayAsync("rig broke place:join end:curl", id: "one");
        await _room.SayAsync("rig broke place:join end:curl", id: "one");
        foreach (var button in first.Actions.Where(button => button.Kind is not ActionKind.Run))
        {
            Assert.Null((await _room.SayAsync(button.Command[1..])).Problem);
        }

        Assert.Equal(2, Figure(await _room.SayAsync("rig broke place:join end:curl"), "break-offs"));
    }

    [Fact]
    public async Task Unbroke_ByWhoReportedIt_NoLongerCountsAndItsNumberIsGivenToNoOther()
    {
        await _room.SayAsync("rig broke place:join end:curl");
        var mistaken = await _room.SayAsync("rig broke place:join end:curl");
        var undo = Assert.Single(mistaken.Actions, button => button.Kind is ActionKind.Run);

        Assert.Equal("Break-off 2 is somebody else's: they or a steward may take it back.", (await _room.SayAsync(undo.Command[1..], "Bo", Role.Member)).Problem);
        Assert.Equal("Break-off 2 no longer counts", (await _room.SayAsync(undo.Command[1..])).Headline);
        Assert.StartsWith("There is no break-off 2 in this crew", (await _room.SayAsync(undo.Command[1..])).Problem, StringComparison.Ordinal);
        Assert.StartsWith("Logged as break-off 3: your crew has seen 2 such.", (await _room.SayAsync("rig broke place:join end:curl")).Lines[2], StringComparison.Ordinal);
    }

    [Fact]
    public async Task Unbroke_OneOfFiveMeasured_GivesTheTradesRangeAgain()
    {
        var before = await _room.SayAsync(Check);
        for (var broke = 0; broke < 5; broke++)
        {
            await _room.SayAsync($"{Measured}5lb");
        }

        await _room.SayAsync("rig unbroke break:3");

        Assert.Equal(before.Lines, (await _room.SayAsync(Check)).Lines);
    }

    [Fact]
    public async Task Broke_InADirectMessage_IsAnsweredAndNotLogged()
    {
        var reply = await _room.SayAsync("rig broke place:join end:curl", crew: null);

        Assert.Equal(2, reply.Lines.Count);
        Assert.Equal(1, Figure(await _room.SayAsync("rig broke place:join end:curl"), "break-offs"));
    }

    [Fact]
    public async Task Check_FiveMeasuredBreakOffs_TakesTheCrewsOwnRangeAndSaysSo()
    {
        var before = await _room.SayAsync(Check);
        for (var broke = 1; broke < 5; broke++)
        {
            Assert.Equal($"Double uni on braid: {broke} of the 5 break-offs that it takes to know your crew's own range.", (await _room.SayAsync($"{Measured}5lb")).Lines[3]);
        }

        Assert.Equal(before.Lines, (await _room.SayAsync(Check)).Lines);
        var fifth = await _room.SayAsync($"{Measured}5lb");
        var after = await _room.SayAsync(Check);

        // Five at half the label: the middle goes to (-0.45815 + 5 × -0.69315)/6 = -0.65398, the reach to √(7/12) × 0.23500.
        Assert.Equal("Your crew's double uni on braid parts at 43–62 % of the label, from 5 break-offs (the trade says 50–80 %).", fifth.Lines[3]);
        Assert.Contains(fifth.Lines[3], after.Lines);
        Assert.Equal(43.45, Figure(after, "knot.low"), 2);
        Assert.Equal(0.4345 * 26.689, Figure(after, "weakest-link.low"), 2);
        Assert.DoesNotContain(fifth.Lines[3], (await _room.SayAsync(Check, crew: "loon")).Lines);
    }

    [Fact]
    public async Task Check_MoreFaultsThanFit_StillFitsAPhone()
    {
        for (var broke = 0; broke < 5; broke++)
        {
            await _room.SayAsync($"{Measured}5lb");
        }

        var reply = await _room.SayAsync(
            "rig check mainline:\"braid 4lb\" leader:\"fluorocarbon 12lb\" hardware:\"snap size 000\" lure:\"1/16oz jigging spoon\" species:pike depth:100ft");

        Assert.InRange(reply.Lines.Count, 6, 8);
    }

    [Fact]
    public async Task Erase_WhoReportedThem_TakesTheirBreakOffsOutOfTheRange()
    {
        for (var broke = 0; broke < 5; broke++)
        {
            await _room.SayAsync($"{Measured}5lb", member: "Bo");
        }

        await _room.SayAsync("crew privacy do:erase confirm:yes", member: "Bo");

        Assert.DoesNotContain((await _room.SayAsync(Check)).Lines, line => line.StartsWith("Your crew's", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("place:hook end:straightened knot:palomar", "knot: at that place no Palomar parts. Leave it out, or give place:join or place:lure.")]
    [InlineData("place:join end:curl line:\"braid 6lb\" pull:20lb", "pull: 20.0 lb (9.1 kg) is more than any 6 lb (2.7 kg) braid holds. Give what the scale read, such as 3.6 lb (1.6 kg).")]
    [InlineData("place:join end:curl pull:\"3 ft\"", "pull: '3 ft'")]
    [InlineData("place:join end:curl line:braid", "line: 'braid' has neither test nor diameter.")]
    [InlineData("place:join end:curl knot:palimar", "knot: 'palimar' is not known. Nearest: Palomar")]
    public async Task Broke_WrongInput_IsRefusedInALine(string options, string start) =>
        Assert.StartsWith(start, (await _room.SayAsync($"rig broke {options}")).Problem, StringComparison.Ordinal);

    public ValueTask DisposeAsync() => _room.DisposeAsync();

    private static double Figure(Reply reply, string key) => Assert.Single(reply.Figures, figure => figure.Key == key).Value;
}
