using CrewBot.Worker.Demos;

namespace CrewBot.Worker.Tests.Demos;

public sealed class DemoTests : IDisposable
{
    private const string Learn = "/catch learn species:walleye span:all";

    private readonly TemporaryFolder _folder = new();

    [Fact]
    public async Task Demo_Asked_FindsWhatWasPlantedAndNothingElse()
    {
        var written = await RunAsync("demo");
        Assert.Contains("twice as often", written, StringComparison.Ordinal);

        Assert.Matches($"{DemoSeason.PlantedWay} is best \\(nearly certain\\)", await RunAsync("say", Learn));
        Assert.Matches("too close to call|leaning", await RunAsync("say", Learn + " by:time"));
        Assert.Matches("too close to call|leaning", await RunAsync("say", Learn + " by:depth"));
    }

    [Fact]
    public async Task Demo_DatabaseIsThere_RefusesAndLeavesIt()
    {
        await File.WriteAllTextAsync(Database, "somebody's winter", TestContext.Current.CancellationToken);
        var desk = Desk();

        Assert.Equal(2, await desk.StartAsync("demo"));

        Assert.Contains("is there already", Assert.Single(desk.ErrorLines), StringComparison.Ordinal);
        Assert.Equal("somebody's winter", await File.ReadAllTextAsync(Database, TestContext.Current.CancellationToken));
    }

    [Fact]
    public void Tell_Twice_IsTheSameWinter() =>
        Assert.Equal(new DemoSeason().Tell(TimeZoneInfo.Utc), new DemoSeason().Tell(TimeZoneInfo.Utc));

    public void Dispose() => _folder.Dispose();

    private string Database => Path.Combine(_folder.Path, "demo.db");

    private Desk Desk() => new() { Environment = { ["CREWBOT_DATABASE"] = Database } };

    private async Task<string> RunAsync(params string[] arguments)
    {
        var desk = Desk();
        Assert.Equal(0, await desk.StartAsync(arguments));
        Assert.Empty(desk.Error);
        return desk.Output;
    }
}
