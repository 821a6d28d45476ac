using CrewBot.Chat.Commands;

namespace CrewBot.Chat.Tests.Learning;

public sealed class LearnCatchesTests : IAsyncDisposable
{
    private readonly CrewRoom _room = new();

    [Fact]
    public async Task Learn_FishInCountedHours_GivesTheRateWithItsExactInterval()
    {
        await FishAsync("jigging spoon", hours: 20, fish: 3);

        var reply = await _room.SayAsync("catch learn species:walleye");

        // Exact Poisson limits for 3 fish in 20 h: 0.03093 to 0.43836 (Garwood; computed in the project's reference).
        Assert.Equal("1. jigging spoon: 0.15 a line-hour (likely 0.031 to 0.44), 3 fish in 20 line-hours", reply.Lines[0]);
        Assert.Equal(0.15, Figure(reply, "way1.rate"), 9);
        Assert.Equal(0.03093, Figure(reply, "way1.rate.low"), 5);
        Assert.Equal(0.43836, Figure(reply, "way1.rate.high"), 5);
        Assert.Equal("Walleye, this season: jigging spoon is all that was fished", reply.Headline);
        Assert.StartsWith("Try next: small jig (not fished yet)", reply.Lines[1], StringComparison.Ordinal);
    }

    [Fact]
    public async Task Learn_ThreeLuckyFish_DoNotOutrankASeason()
    {
        await FishAsync("jigging spoon", hours: 40, fish: 24);
        await FishAsync("small jig", hours: 1, fish: 3);

        var reply = await _room.SayAsync("catch learn species:walleye");

        Assert.Equal("Walleye, this season: jigging spoon leads, too early to say", reply.Headline);
        Assert.StartsWith("1. jigging spoon", reply.Lines[0], StringComparison.Ordinal);
        Assert.StartsWith("2. small jig: 3.0 a line-hour", reply.Lines[1], StringComparison.Ordinal);
        Assert.StartsWith("Try next: small jig (1.0 line-hours so far)", reply.Lines[2], StringComparison.Ordinal);
    }

    [Fact]
    public async Task Learn_ByMood_SaysWhatHasNoMood()
    {
        await FishAsync("jigging spoon", hours: 10, fish: 4, more: " mood:negative depth:24ft");
        await FishAsync("jigging spoon", hours: 6, fish: 1);

        var reply = await _room.SayAsync("catch learn species:walleye by:mood,depth");

        Assert.Equal("1. negative mood, 20 ft (6.1 m) to 30 ft (9.1 m): 0.40 a line-hour (likely 0.11 to 1.0), 4 fish in 10 line-hours", reply.Lines[0]);
        Assert.Contains(reply.Lines, line => line.StartsWith("Left out: 6.0 line-hours and 1 fish without mood or depth", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Learn_FishWithoutHoursAndForgottenSpells_AreInNoRateAndSaid()
    {
        await FishAsync("jigging spoon", hours: 10, fish: 4);
        await _room.SayAsync("log walleye 23in");
        await _room.SayAsync("lines down", member: "Bo");
        _room.Now += TimeSpan.FromHours(30);

        var reply = await _room.SayAsync("catch learn species:walleye");

        Assert.Equal(4, Figure(reply, "way1.rate.fish"));
        Assert.Equal(10, Figure(reply, "way1.rate.line-hours"), 9);
        Assert.Contains("In no rate: 1 fish caught while no lines of theirs were down.", reply.Lines);
        Assert.Contains(reply.Lines, line => line.StartsWith("In no rate: 1 spell that nobody ended", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Learn_LinesThatAreDown_CountUntilNow()
    {
        await _room.SayAsync("lines down lines:2 presentation:\"jigging spoon\"");
        _room.Now += TimeSpan.FromHours(3);
        await _room.SayAsync("log walleye 20in");

        Assert.Equal(6, Figure(await _room.SayAsync("catch learn"), "way1.rate.line-hours"), 9);
    }

    [Fact]
    public async Task Plan_AWayThatGaveMoreThanTheTradesFirst_GoesAheadAndSaysWhy()
    {
        await FishAsync("jigging spoon", hours: 60, fish: 12);
        await FishAsync("small jig", hours: 60, fish: 48);

        var reply = await _room.SayAsync("rig plan species:walleye");

        Assert.EndsWith(": small jig, your crew's best", reply.Headline, StringComparison.Ordinal);
        Assert.Contains(
            "Your crew: 0.80 a line-hour on this in January, from 60 hours: likely more than a jigging spoon gives, so it goes ahead of that.", reply.Reasons);
        Assert.Equal(0.8, Figure(reply, "rate"), 9);
        Assert.Equal(60, Figure(reply, "rate.line-hours"), 9);
    }

    [Fact]
    public async Task Plan_ThreeLuckyFish_ReorderNothing()
    {
        await FishAsync("jigging spoon", hours: 40, fish: 24);
        await FishAsync("small jig", hours: 1, fish: 3);

        Assert.EndsWith(": jigging spoon", (await _room.SayAsync("rig plan species:walleye")).Headline, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Plan_AnotherCrewsFishing_SaysNothing()
    {
        await FishAsync("small jig", hours: 60, fish: 48);

        var reply = await _room.SayAsync("rig plan species:walleye", crew: "loon");

        Assert.DoesNotContain(reply.Reasons, reason => reason.StartsWith("Your crew", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Learn_NoHours_SaysHowToCountThem()
    {
        await _room.SayAsync("log walleye 20in");

        Assert.StartsWith("No fish in counted line-hours for this season.", (await _room.SayAsync("catch learn")).Problem, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("catch learn by:phase", "can't read 'phase'. Give presentation, mood, species, depth or time.")]
    [InlineData("catch learn by:mood,depth,time,presentation", "4 are too many: at most 3.")]
    [InlineData("catch learn species:wallye", "'wallye' is not known.")]
    public async Task Learn_WrongInput_IsRefusedInALine(string line, string part) =>
        Assert.Contains(part, (await _room.SayAsync(line)).Problem, StringComparison.Ordinal);

    public ValueTask DisposeAsync() => _room.DisposeAsync();

    // Lines of Ana and a few more, so that no spell is longer than anybody fishes.
    private async Task FishAsync(string presentation, int hours, int fish, string more = "")
    {
        var left = hours;
        for (var caught = 0; left > 0;)
        {
            var now = Math.Min(10, left);
            Assert.Null((await _room.SayAsync($"lines down presentation:\"{presentation}\"{more}")).Problem);
            for (; caught < fish * (hours - left + now) / hours; caught++)
            {
                Assert.Null((await _room.SayAsync($"catch log species:walleye length:{20 + caught}cm presentation:\"{presentation}\"")).Problem);
            }

            _room.Now += TimeSpan.FromHours(now);
            Assert.Null((await _room.SayAsync("lines up")).Problem);
            _room.Now += TimeSpan.FromHours(1);
            left -= now;
        }
    }

    private static double Figure(Reply reply, string key) => Assert.Single(reply.Figures, figure => figure.Key == key).Value;
}
