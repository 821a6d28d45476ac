using System.Text.Json;

namespace CrewBot.EndToEnd.Tests;

public sealed class SayTests
{
    private const string Walleye = "/rig plan species:walleye depth:24ft mood:negative";

    [Fact]
    public async Task Say_APlan_AnswersInTextThatFitsAPhone()
    {
        var run = await Worker.RunAsync("say", Walleye);

        Assert.Equal((0, ""), (run.ExitCode, run.Error));
        Assert.StartsWith("Walleye", run.Output, StringComparison.Ordinal);
        Assert.All(run.Output.Split('\n'), line => Assert.InRange(line.Length, 0, 80));
    }

    [Fact]
    public async Task Say_WithJson_GivesEveryKeyOfTheContract()
    {
        var run = await Worker.RunAsync("say", Walleye, "--json");

        var reply = JsonDocument.Parse(run.Output).RootElement;
        Assert.Equal(0, run.ExitCode);
        foreach (var key in new[] { "headline", "lines", "figures", "reasons", "cautions", "pictures", "actions", "audience", "problem" })
        {
            Assert.True(reply.TryGetProperty(key, out _), key);
        }

        Assert.All(reply.GetProperty("figures").EnumerateArray(), figure =>
        {
            Assert.NotEmpty(figure.GetProperty("key").GetString()!);
            Assert.True(double.IsFinite(figure.GetProperty("value").GetDouble()));
            Assert.NotNull(figure.GetProperty("unit").GetString());
        });
        Assert.Equal(JsonValueKind.Null, reply.GetProperty("problem").ValueKind);
    }

    [Fact]
    public async Task Say_WordsAlone_AreReadAsAPlan()
    {
        var run = await Worker.RunAsync("say", "walleye 24ft negative in the open -12C");

        Assert.Equal(0, run.ExitCode);
        Assert.StartsWith("Walleye", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Say_SameCallTwice_GivesTheSameAnswer()
    {
        var call = new[] { "say", Walleye, "--json", "--crew", "Loon Basin", "--as", "ida", "--id", "7", "--at", "2026-01-17T07:30-06:00" };

        Assert.Equal((await Worker.RunAsync(call)).Output, (await Worker.RunAsync(call)).Output);
    }

    /// <summary>The table of bad input: one short line on standard error, nothing else, exit code 1.</summary>
    public static TheoryData<string, string> BadInput => new()
    {
        { "/rig plan species:wallaye depth:24ft", "walleye" },
        { "/rig plan species:kraken", "kraken" },
        { "/rig plan species:walleye depth:0", "depth" },
        { "/rig plan species:walleye depth:-3ft", "depth" },
        { "/rig plan species:walleye depth:500m", "depth" },
        { "/rig plan species:walleye depth:24lb", "depth" },
        { "/rig plan species:walleye depth:NaN", "depth" },
        { "/rig plan species:walleye depth:1e999", "depth" },
        { "/rig plan species:walleye depth:1,234", "1,234" },
        { "/rig plan species:walleye mood:grumpy", "mood" },
        { "/rig plan species:walleye colour:red", "colour" },
        { "/rig plan species:walleye species:perch", "twice" },
        { "/rig plan", "species" },
        { "/rig", "rig" },
        { "/rog plan", "rog" },
        { "", "Nothing" },
        { "   ", "Nothing" },
        { new string('x', 10_000), "10000" },
        { "/rig plan species:wal\u001b[31mleye", "control" },
        { "/rig plan species:\u202Eeyellaw", "species" },
        { "/rig plan species:🐟🎣", "species" },
        { "عين", "species" },
        { "undo", "/catch void" },
        { "ice bord", "/ice board" },
        { "can I drive on loon basin", "never says that ice is safe" },
    };

    [Theory]
    [MemberData(nameof(BadInput))]
    public async Task Say_BadInput_IsRefusedInOneShortLine(string command, string names)
    {
        var run = await Worker.RunAsync("say", command);

        Assert.Equal((1, ""), (run.ExitCode, run.Output));
        var line = Assert.Single(run.ErrorLines);
        Assert.Contains(names, line, StringComparison.OrdinalIgnoreCase);
        Assert.InRange(line.Length, 10, 300);
        Assert.DoesNotContain(line, character => char.IsControl(character) || character is '\u202E');
    }

    [Theory]
    [InlineData("/rig plan species:walleye depth:7,3m", 7.3)]
    [InlineData("/rig plan species:walleye depth:\"4 fathoms\"", 7.3152)]
    [InlineData("/rig plan species:walleye depth:24'", 7.3152)]
    public async Task Say_ForgivingInput_Reads(string command, double metres)
    {
        var run = await Worker.RunAsync("say", command, "--json");

        Assert.Equal(0, run.ExitCode);
        var depth = JsonDocument.Parse(run.Output).RootElement.GetProperty("figures").EnumerateArray()
            .First(figure => figure.GetProperty("key").GetString() == "depth").GetProperty("value").GetDouble();
        Assert.Equal(metres, depth, tolerance: 1e-9); // exact but for the rounding of a double
    }

    [Fact]
    public async Task Say_Refused_GivesTheProblemInTheObjectAndOnError()
    {
        var run = await Worker.RunAsync("say", "/rig plan species:walleye depth:24lb", "--json");

        Assert.Equal(1, run.ExitCode);
        var problem = JsonDocument.Parse(run.Output).RootElement.GetProperty("problem").GetString();
        Assert.Equal(problem, Assert.Single(run.ErrorLines));
    }

    [Theory]
    [InlineData("say")]
    [InlineData("say", "walleye", "24ft")]
    [InlineData("say", "walleye", "--role", "captain")]
    [InlineData("walleye")]
    public async Task Start_UnusableCall_SaysWhatToTypeAndGives2(params string[] args)
    {
        var run = await Worker.RunAsync(args);

        Assert.Equal((2, ""), (run.ExitCode, run.Output));
        Assert.Contains("Type: say", Assert.Single(run.ErrorLines), StringComparison.Ordinal);
    }
}
