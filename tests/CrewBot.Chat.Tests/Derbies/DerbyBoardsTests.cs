using CrewBot.Chat.Commands;

namespace CrewBot.Chat.Tests.Derbies;

/// <summary>What is kept counted in memory says what a count from the first event on says.</summary>
public sealed class DerbyBoardsTests : IAsyncDisposable
{
    private static readonly string[] Anglers = ["Ana", "Bo", "Cy", "Dee"];

    private readonly CrewRoom _room = new();

    public ValueTask DisposeAsync() => _room.DisposeAsync();

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    public async Task Standings_AfterAnyEvents_AreWhatACountAnewGives(int run)
    {
        var random = new Random(run);
        _room.Now = new DateTimeOffset(2027, 1, 16, 14, 0, 0, TimeSpan.Zero);
        await _room.SayAsync("/derby create name:Day ends:23:00 minimum:8in teams:sum best:2");
        for (var number = 0; number < 120; number++)
        {
            _room.Now += TimeSpan.FromSeconds(70);
            await _room.SayAsync(AnyOf(random), Anglers[random.Next(Anglers.Length)]);
            if (number % 10 == 9)
            {
                foreach (var question in (string[])["/derby standings", "/derby results", "/derby angler person:Bo"])
                {
                    Assert.Equal(ReplyJson.Write(await _room.AfreshAsync(question)), ReplyJson.Write(await _room.SayAsync(question)));
                }
            }
        }

        Assert.NotEmpty((await _room.SayAsync("/derby results")).Figures);
    }

    [Fact]
    public async Task Standings_SomebodyIsErased_ForgetWhatTheySaid()
    {
        await _room.SayAsync("/derby create name:Day ends:23:00");
        await _room.SayAsync("/derby join");
        await _room.SayAsync("/derby join", "Bo");
        await _room.SayAsync("/derby enter species:walleye length:20in");
        await _room.SayAsync("/derby protest entry:1 reason:\"tail was spread\"", "Bo");
        Assert.Contains("tail was spread", ReplyJson.Write(await _room.SayAsync("/derby standings")), StringComparison.Ordinal);

        await _room.SayAsync("/crew privacy do:erase confirm:yes", "Bo");

        Assert.DoesNotContain("tail was spread", ReplyJson.Write(await _room.SayAsync("/derby standings")), StringComparison.Ordinal);
    }

    private static string AnyOf(Random random)
    {
        var entry = random.Next(1, 12);
        return random.Next(14) switch
        {
            0 => "/derby join team:North",
            1 => "/derby join team:South",
            2 => "/derby team team:South",
            3 or 4 or 5 => $"/derby enter species:walleye length:{random.Next(28, 120) / 4m}in",
            6 or 7 => $"/derby saw entry:{entry}",
            8 => $"/derby protest entry:{entry} reason:doubt",
            9 => $"/derby rulings entry:{entry} ruling:{(random.Next(2) == 0 ? "accept" : "refuse")} reason:ruled",
            10 => $"/derby amend entry:{entry} length:{random.Next(28, 120) / 4m}in reason:misread",
            11 => $"/derby penalty entry:{entry} length:1in reason:late",
            12 => $"/catch void catch:{entry}",
            _ => random.Next(3) switch { 0 => "/derby leave", 1 => $"/derby leave entry:{entry}", _ => random.Next(2) == 0 ? "/derby close" : "/derby reopen" },
        };
    }
}
