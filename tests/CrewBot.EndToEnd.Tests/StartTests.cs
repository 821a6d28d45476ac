namespace CrewBot.EndToEnd.Tests;

public sealed class StartTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("crewbot-").FullName;

    [Fact]
    public async Task Start_GoodOverlay_IsUsed()
    {
        var config = Overlaid("""{ "species": [ { "key": "walleye", "name": "Basin walleye" } ] }""");

        var run = await Worker.RunAsync("say", "walleye 24ft", "--config", config);

        Assert.Equal((0, ""), (run.ExitCode, run.Error));
        Assert.Contains("Basin walleye", run.Output, StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public async Task Start_BadOverlay_NamesFileRecordAndFieldOfEveryFault()
    {
        var config = Overlaid("""
            { "species": [ { "key": "walleye", "teeth": "blunt" }, { "key": "burbot", "bodyDepthShare": "deep" } ] }
            """);

        var run = await Worker.RunAsync("say", "walleye 24ft", "--config", config);

        Assert.Equal((2, ""), (run.ExitCode, run.Output));
        Assert.Collection(
            run.ErrorLines,
            line => Assert.StartsWith("ours.json: species/walleye: teeth: ", line, StringComparison.Ordinal),
            line => Assert.StartsWith("ours.json: species/burbot: bodyDepthShare: ", line, StringComparison.Ordinal));
    }

    [Fact]
    public async Task Start_OverlayThatIsNoFile_StopsWithOneLine()
    {
        Directory.CreateDirectory(Path.Combine(_folder, "ours.json"));

        var run = await Worker.RunAsync("--config", Config("""{ "CrewBot": { "KnowledgeFile": "ours.json" } }"""));

        Assert.Equal((2, ""), (run.ExitCode, run.Output));
        Assert.Contains("ours.json", Assert.Single(run.ErrorLines), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Start_OverlayThatMayNotBeRead_StopsWithOneLine()
    {
        Assert.SkipWhen(Environment.IsPrivilegedProcess, "A privileged user may read every file.");
        var config = Overlaid("{}");
        if (OperatingSystem.IsWindows())
        {
            Assert.Skip("Windows keeps permissions otherwise.");
        }
        else
        {
            File.SetUnixFileMode(Path.Combine(_folder, "ours.json"), UnixFileMode.None);
        }

        var run = await Worker.RunAsync("--config", config);

        Assert.Equal(2, run.ExitCode);
        Assert.Contains("can't be read", Assert.Single(run.ErrorLines), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("""{ "CrewBot": { "Units": "cubits" } }""", "CrewBot:Units is 'cubits': write customary or metric.")]
    [InlineData("""{ "CrewBot": { "Unitz": "metric" } }""", "CrewBot:Unitz: there is no such key; nearest is CrewBot:Units.")]
    public async Task Start_WrongSetting_StopsWithKeyValueAndRemedy(string settings, string line)
    {
        var run = await Worker.RunAsync("--config", Config(settings));

        Assert.Equal((2, "", line + "\n"), (run.ExitCode, run.Output, run.Error.ReplaceLineEndings("\n")));
    }

    [Fact]
    public async Task SelfCheck_DatabaseThatIsThere_SaysLineByLineHowItStands()
    {
        var environment = new Dictionary<string, string> { ["CREWBOT_DATABASE"] = Path.Combine(_folder, "crew.db") };
        await Worker.RunAsync(new WorkerCall { Arguments = ["say", "catch log species:walleye"], Environment = environment });

        var run = await Worker.RunAsync(new WorkerCall { Arguments = ["selfcheck"], Environment = environment });

        Assert.Equal((0, ""), (run.ExitCode, run.Error));
        Assert.Contains("database check: ok", run.Output, StringComparison.Ordinal);
        Assert.Contains("posts: ok, none waits", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task SelfCheck_TokenAmongTheUsersSecrets_IsReadInDevelopmentAlone()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "There the secrets lie where no test may move them.");
        var secrets = Directory.CreateDirectory(Path.Combine(_folder, ".microsoft", "usersecrets", "crewbot"));
        await File.WriteAllTextAsync(
            Path.Combine(secrets.FullName, "secrets.json"),
            """{ "CrewBot:Discord:Token": "a.b.c", "CrewBot:Discord:ApiBaseAddress": "http://127.0.0.1:1/" }""",
            TestContext.Current.CancellationToken);
        Task<WorkerRun> CheckAsync(string environment) => Worker.RunAsync(new WorkerCall
        {
            Arguments = ["selfcheck"],
            Environment = new Dictionary<string, string> { ["HOME"] = _folder, ["DOTNET_ENVIRONMENT"] = environment },
        });

        Assert.Contains("bot token: ok, by its shape", (await CheckAsync("Development")).Output, StringComparison.Ordinal);
        Assert.Contains("bot token: none is given", (await CheckAsync("Production")).Output, StringComparison.Ordinal);
    }

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    private string Overlaid(string overlay)
    {
        File.WriteAllText(Path.Combine(_folder, "ours.json"), overlay);
        return Config("""{ "CrewBot": { "KnowledgeFile": "ours.json" } }""");
    }

    private string Config(string settings)
    {
        var path = Path.Combine(_folder, "crew.json");
        File.WriteAllText(path, settings);
        return path;
    }
}
