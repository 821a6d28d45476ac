using System.Text.Json;

namespace CrewBot.Worker.Tests.Configuration;

public sealed class StartTests
{
    private const string Ask = "/rig plan species:walleye depth:24ft";

    [Fact]
    public async Task Say_CommandAnswered_PrintsAndGives0()
    {
        var desk = new Desk();

        Assert.Equal(0, await desk.StartAsync("say", Ask));

        Assert.StartsWith("Walleye", desk.Output, StringComparison.Ordinal);
        Assert.Empty(desk.Error);
    }

    [Fact]
    public async Task Say_CommandRefused_PrintsOneLineOnErrorAloneAndGives1()
    {
        var desk = new Desk();

        Assert.Equal(1, await desk.StartAsync("say", "/rig plan species:walleye depth:24lb"));

        Assert.Empty(desk.Output);
        Assert.Contains("depth", Assert.Single(desk.ErrorLines), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Say_CommandRefusedWithJson_PrintsTheReplyObjectToo()
    {
        var desk = new Desk();

        Assert.Equal(1, await desk.StartAsync("say", "--json", "/rig plan species:walleye depth:24lb"));

        var problem = JsonDocument.Parse(desk.Output).RootElement.GetProperty("problem").GetString();
        Assert.Equal(problem, Assert.Single(desk.ErrorLines));
    }

    [Fact]
    public async Task Say_Pictures_DrawsIntoTheFolderAndSaysWhere()
    {
        using var folder = new TemporaryFolder();
        var desk = new Desk { Width = 400 };

        Assert.Equal(0, await desk.StartAsync("say", Ask, "--pictures", folder.Path));

        var drawn = folder.File("rig.png");
        Assert.Contains($"Written: {drawn}", desk.Output, StringComparison.Ordinal);
        Assert.Equal("\u0089PNG", System.Text.Encoding.Latin1.GetString(await File.ReadAllBytesAsync(drawn, TestContext.Current.CancellationToken))[..4]);
    }

    [Fact]
    public async Task Say_PicturesAsJson_HoldsPathAndAlternativeTextButNoBytes()
    {
        using var folder = new TemporaryFolder();
        var desk = new Desk();

        Assert.Equal(0, await desk.StartAsync("say", "--json", Ask, "--pictures", folder.Path));

        var reply = JsonDocument.Parse(desk.Output).RootElement;
        Assert.Empty(reply.GetProperty("files").EnumerateArray());
        Assert.Contains("weakest", reply.GetProperty("pictures")[0].GetProperty("alternativeText").GetString(), StringComparison.Ordinal);
        Assert.True(File.Exists(folder.File("rig.png")));
    }

    [Fact]
    public async Task Say_Dash_ReadsTheCommandFromStandardInput()
    {
        var desk = new Desk { Input = Ask + "\n" };

        Assert.Equal(0, await desk.StartAsync("say", "-"));

        Assert.StartsWith("Walleye", desk.Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("help")]
    [InlineData("help rig plan")]
    public async Task Say_Help_Answers(string command)
    {
        var desk = new Desk();

        Assert.Equal(0, await desk.StartAsync("say", command));

        Assert.Contains("rig plan", desk.Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("say")]
    [InlineData("say", "walleye", "24ft")]
    [InlineData("sya", "walleye")]
    [InlineData("say", "walleye", "--role", "captain")]
    [InlineData("say", "walleye", "--at", "yesterday")]
    [InlineData("say", "walleye", "--at", "2026-01-17T07:30")]
    [InlineData("say", "walleye", "--at", "0001-01-01T00:00:00Z")]
    [InlineData("say", "walleye", "--as", "")]
    [InlineData("say", "walleye", "--crew", "bell\u0007")]
    [InlineData("say", "walleye", "--id")]
    [InlineData("say", "walleye", "--loud")]
    [InlineData("--config")]
    public async Task Start_UnusableCall_SaysWhatToTypeInOneLineAndGives2(params string[] args)
    {
        var desk = new Desk();

        Assert.Equal(2, await desk.StartAsync(args));

        Assert.Empty(desk.Output);
        Assert.Contains("Type: say", Assert.Single(desk.ErrorLines), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("2026-01-17T07:30-06:00")]
    [InlineData("2026-01-17T13:30Z")]
    [InlineData("2026-01-17T13:30:15.5+00:00")]
    public async Task Say_InstantWithOffset_IsTaken(string instant)
    {
        var desk = new Desk();

        Assert.Equal(0, await desk.StartAsync("say", Ask, "--at", instant));
    }

    [Theory]
    [InlineData("--help")]
    [InlineData("--version")]
    public async Task Start_AskedAboutItself_AnswersAndGives0(string option)
    {
        var desk = new Desk();

        Assert.Equal(0, await desk.StartAsync(option));

        Assert.NotEmpty(desk.Output);
        Assert.Empty(desk.Error);
    }

    [Fact]
    public async Task Start_ArgumentStartsWithAt_IsNoResponseFile()
    {
        var desk = new Desk();

        Assert.Equal(1, await desk.StartAsync("say", "@/etc/hostname"));

        Assert.Single(desk.ErrorLines);
    }

    [Fact]
    public async Task Start_UnitsMetric_RepliesGiveMetresFirst()
    {
        var desk = new Desk { Environment = { ["CREWBOT_UNITS"] = "metric" } };

        Assert.Equal(0, await desk.StartAsync("say", "/rig plan species:walleye depth:7.3"));

        Assert.Contains("7.3 m (24 ft)", desk.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Start_WrongConfiguration_StopsWithALineAFaultAndGives2()
    {
        using var folder = new TemporaryFolder();
        var config = folder.Write("crew.json", """{ "CrewBot": { "Units": "cubits", "Unitz": "metric" } }""");
        var desk = new Desk();

        Assert.Equal(2, await desk.StartAsync("say", Ask, "--config", config));

        Assert.Equal(
            ["CrewBot:Unitz: there is no such key; nearest is CrewBot:Units.", "CrewBot:Units is 'cubits': write customary or metric."],
            desk.ErrorLines);
    }

    [Fact]
    public async Task Start_BadKnowledgeFile_StopsWithALineAFaultAndGives2()
    {
        using var folder = new TemporaryFolder();
        folder.Write("ours.json", """
            { "species": [ { "key": "walleye", "teeth": "blunt" }, { "key": "yellow-perch", "bodyDepthShare": "deep" } ] }
            """);
        var config = folder.Write("crew.json", """{ "CrewBot": { "KnowledgeFile": "ours.json" } }""");
        var desk = new Desk();

        Assert.Equal(2, await desk.StartAsync("say", Ask, "--config", config));

        Assert.Collection(
            desk.ErrorLines,
            line => Assert.StartsWith("ours.json: species/walleye: teeth: ", line, StringComparison.Ordinal),
            line => Assert.StartsWith("ours.json: species/yellow-perch: bodyDepthShare: ", line, StringComparison.Ordinal));
    }

    [Fact]
    public async Task Start_GoodKnowledgeFile_IsLaidOver()
    {
        using var folder = new TemporaryFolder();
        folder.Write("ours.json", """{ "species": [ { "key": "walleye", "name": "Basin walleye" } ] }""");
        var config = folder.Write("crew.json", """{ "CrewBot": { "KnowledgeFile": "ours.json" } }""");
        var desk = new Desk();

        Assert.Equal(0, await desk.StartAsync("say", Ask, "--config", config));

        Assert.Contains("Basin walleye", desk.Output, StringComparison.OrdinalIgnoreCase);
    }
}
