using CrewBot.Discord;
using CrewBot.Storage.Connections;
using CrewBot.Storage.Outbox;
using CrewBot.Worker.Rooms;
using Microsoft.Data.Sqlite;
using Microsoft.Extensions.Time.Testing;

namespace CrewBot.Worker.Tests.Rooms;

public sealed class DatabaseCheckTests : IDisposable
{
    private static readonly DateTimeOffset Due = new(2027, 1, 16, 12, 0, 0, TimeSpan.Zero);

    private readonly TemporaryFolder _folder = new();

    private static CancellationToken Limit => TestContext.Current.CancellationToken;

    private string Path => _folder.File("crew.db");

    [Fact]
    public async Task RunAsync_NoPlace_SaysWhichKeyToSet()
    {
        var finding = Assert.Single(await new DatabaseCheck(null, TimeProvider.System).RunAsync(Limit));

        Assert.False(finding.IsWell);
        Assert.Contains("CrewBot:Database", finding.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task RunAsync_NoFileYet_IsWellAndMakesNone()
    {
        var findings = await RunAsync();

        Assert.All(findings, finding => Assert.True(finding.IsWell, finding.Text));
        Assert.False(File.Exists(Path));
    }

    [Fact]
    public async Task RunAsync_PlaceThatNobodyMayWriteTo_SaysSoBeforeAnythingIsLost()
    {
        Assert.SkipUnless(OperatingSystem.IsLinux(), "/proc takes no files, not even of root");

        var finding = (await new DatabaseCheck("/proc/crewbot/crew.db", TimeProvider.System).RunAsync(Limit))[0];

        Assert.False(finding.IsWell);
        Assert.StartsWith("/proc/crewbot/crew.db can't be made: ", finding.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task RunAsync_NothingToSay_IsWellLineByLine()
    {
        await SayAsync();

        var findings = await RunAsync();

        Assert.Equal(["database", "database shape", "database check", "posts", "posts given up", "disk"], findings.Select(finding => finding.Subject));
        Assert.All(findings, finding => Assert.True(finding.IsWell, finding.Text));
        Assert.Contains($"ok, {DatabaseState.NewestShape}", findings[1].Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task RunAsync_PostsWaitTooLong_SaysForHowLongAndWhatToDo()
    {
        await SayAsync("trip/1/card", "trip/2/card");

        Assert.True((await RunAsync(Due.AddMinutes(15))).Single(finding => finding.Subject == "posts").IsWell);
        var late = (await RunAsync(Due.AddHours(3))).Single(finding => finding.Subject == "posts");
        Assert.False(late.IsWell);
        Assert.StartsWith("2 wait, 0 of them to correct what stands in a chat; the oldest has waited for 3 h: start CrewBot", late.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task RunAsync_PostWasGivenUp_NamesPlaceAndFaultAndNothingOfWhatItSays()
    {
        await SayAsync("trip/1/card");
        await ExecuteAsync("UPDATE post SET next_at_ms = NULL, attempts = 30, fault = 'Missing Access'");

        var findings = await RunAsync();

        var dead = findings.Where(finding => finding.Subject == "posts given up").ToList();
        Assert.Equal(2, dead.Count);
        Assert.Equal("trip/1/card of crew alpha to 7, 30 attempts: Missing Access", dead[1].Text);
        Assert.DoesNotContain(findings, finding => finding.Text.Contains("secret", StringComparison.Ordinal));
    }

    [Fact]
    public async Task RunAsync_MessageThatStandsSaysSomethingOld_IsCountedAsACorrection()
    {
        await SayAsync("ice/1/alert");
        await ExecuteAsync("UPDATE post SET message_place = '7', message_id = '8', shown_revision = 1, shown_at_ms = 1, revision = 2");

        var posts = (await RunAsync()).Single(finding => finding.Subject == "posts");

        Assert.Contains("1 wait, 1 of them to correct", posts.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task RunAsync_DamagedFile_SaysSo()
    {
        await File.WriteAllTextAsync(Path, new string('x', 10_000), Limit);

        var finding = (await RunAsync())[0];

        Assert.False(finding.IsWell);
        Assert.Contains("damaged", finding.Text, StringComparison.Ordinal);
    }

    public void Dispose() => _folder.Dispose();

    private Task<IReadOnlyList<Finding>> RunAsync(DateTimeOffset? now = null) => new DatabaseCheck(Path, new FakeTimeProvider(now ?? Due)).RunAsync(Limit);

    private async Task SayAsync(params string[] keys)
    {
        await using var database = await Database.OpenAsync(Path, Limit);
        await database.WriteAsync(
            "alpha",
            async session =>
            {
                foreach (var key in keys)
                {
                    await new PostRepository(session).SayAsync(key, "7", "secret", Due);
                }
            },
            Limit);
    }

    private async Task ExecuteAsync(string sql)
    {
        await using var connection = new SqliteConnection($"Data Source={Path};Pooling=False");
        await connection.OpenAsync(Limit);
        await using var command = connection.CreateCommand();
#pragma warning disable CA2100 // The texts are the constants above.
        command.CommandText = sql;
#pragma warning restore CA2100
        await command.ExecuteNonQueryAsync(Limit);
    }
}
