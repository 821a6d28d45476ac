namespace CrewBot.Worker.Tests.Rooms;

public sealed class TerminalRoomTests
{
    [Fact]
    public async Task Run_LinesFromAPipe_AreAnsweredWithoutPromptCommentsOrBlanks()
    {
        var desk = new Desk { Input = "# two rigs\n\nwalleye 24ft\r\nperch 20ft\n" };

        Assert.Equal(0, await desk.StartAsync());

        Assert.Matches(@"\AWalleye[\s\S]*\n\nYellow perch", desk.Output);
        Assert.DoesNotContain("crewbot>", desk.Output, StringComparison.Ordinal);
        Assert.Empty(desk.Error);
    }

    [Fact]
    public async Task Run_ALineRefused_GoesOnNamesTheLineAndGives1()
    {
        var desk = new Desk { Input = "/rig plan species:walleye depth:24lb\nwalleye 24ft\n" };

        Assert.Equal(1, await desk.StartAsync());

        Assert.StartsWith("line 1: depth", Assert.Single(desk.ErrorLines), StringComparison.Ordinal);
        Assert.StartsWith("Walleye", desk.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Run_Exit_LeavesTheRestUnanswered()
    {
        var desk = new Desk { Input = "exit\nwalleye 24ft\n" };

        Assert.Equal(0, await desk.StartAsync());

        Assert.Empty(desk.Output);
    }

    [Fact]
    public async Task Run_TerminalThatCannotMoveItsCursor_GreetsAndPrompts()
    {
        var desk = new Desk
        {
            Input = "mackerel\nexit\n",
            InputIsTerminal = true,
            OutputIsTerminal = true,
            Environment = { ["TERM"] = "dumb" },
        };

        Assert.Equal(0, await desk.StartAsync());

        Assert.StartsWith("CrewBot.", desk.Output, StringComparison.Ordinal);
        Assert.Contains("crewbot> ", desk.Output, StringComparison.Ordinal);
        Assert.DoesNotContain('\u001b', desk.Output);
        Assert.Empty(desk.Error);
    }

    [Fact]
    public async Task Run_DiscordIsNotReached_AnswersAllTheSame()
    {
        var desk = new Desk
        {
            Input = "walleye 24ft\nexit\n",
            InputIsTerminal = true,
            OutputIsTerminal = true,
            Environment = { ["TERM"] = "dumb", ["CREWBOT_DISCORD__TOKEN"] = "a.b.c", ["CREWBOT_DISCORD__APIBASEADDRESS"] = "http://127.0.0.1:1/" },
        };

        Assert.Equal(0, await desk.StartAsync());

        Assert.Contains("Walleye, neutral, 24 ft", desk.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Run_EndlessLine_IsRefusedAsTooLong()
    {
        var desk = new Desk { Input = new string('x', 200_000) + "\nexit\n" };

        Assert.Equal(1, await desk.StartAsync());

        Assert.StartsWith("line 1: That is 100000 characters", Assert.Single(desk.ErrorLines), StringComparison.Ordinal);
    }
}
