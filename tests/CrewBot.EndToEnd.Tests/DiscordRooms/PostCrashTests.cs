using System.Diagnostics;
using System.Globalization;
using CrewBot.Chat.Commands;
using CrewBot.Discord.StandIn;
using CrewBot.Storage.Connections;
using CrewBot.Storage.Outbox;

namespace CrewBot.EndToEnd.Tests.DiscordRooms;

/// <summary>Kills the program without warning while it brings posts to the platform, again and again on the same database.</summary>
/// <remarks>30 times here; set <c>CRASH_TEST_KILLS</c> for more.</remarks>
public sealed class PostCrashTests : IDisposable
{
    private const string Crew = "1100000000000000001";
    private const int PostsOfARound = 8;
    private const int Places = 3;

    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("crewbot-crash-");
    private int _said;

    private static CancellationToken Limit => TestContext.Current.CancellationToken;

    private string DatabaseFile => Path.Combine(_folder.FullName, "crew.db");

    /// <summary>
    /// What is promised: every post arrives, and readers see it once as long as the platform remembers its nonce, however often
    /// it was sent.
    /// </summary>
    [Fact(Timeout = 600_000)]
    public async Task Kill_AtRandomPointsOfSending_EveryPostArrivesAndIsShownOnce()
    {
        await using var server = await StandInServer.StartAsync();
        for (var kill = 0; kill < Kills.Count; kill++)
        {
            await SayAsync();
            await SendUntilKilledAsync(server);
        }

        var pending = await SendAllAsync(server);
        var requests = server.Requests.Count(request => request.Method == "POST" && request.Path.EndsWith("/messages", StringComparison.Ordinal));

        Assert.Empty(pending);
        Assert.Equal(_said, TitlesIn(server).Distinct().Count());
        Assert.Equal(_said, server.MessagesCreated);
        TestContext.Current.TestOutputHelper?.WriteLine(string.Create(
            CultureInfo.InvariantCulture, $"{Kills.Count} kills, {_said} posts, each shown once; {requests - _said} were sent a second time"));
    }

    public void Dispose() => _folder.Delete(recursive: true);

    private async Task SayAsync()
    {
        await using var database = await Database.OpenAsync(DatabaseFile, Limit);
        await database.WriteAsync(
            Crew,
            async session =>
            {
                var posts = new PostRepository(session);
                for (var number = 0; number < PostsOfARound; number++)
                {
                    var name = string.Create(CultureInfo.InvariantCulture, $"post {++_said}");
                    var place = string.Create(CultureInfo.InvariantCulture, $"{1200000000000000000 + (_said % Places)}");
                    await posts.SayAsync(name, place, ReplyJson.Write(new Reply { Headline = name }), DateTimeOffset.UtcNow);
                }
            },
            Limit);
    }

    // As many requests as it takes are let through; the one in hand is cut off somewhere between being sent and being noted.
    private async Task SendUntilKilledAsync(StandInServer server)
    {
        using var worker = Start(server);
        for (var sent = Random.Shared.Next(1, PostsOfARound + 1); sent > 0; sent--)
        {
            await server.NextRequestAsync("/messages", Limit);
        }

        worker.Kill(); // SIGKILL
        await worker.WaitForExitAsync(Limit);
    }

    private async Task<IReadOnlyList<Post>> SendAllAsync(StandInServer server)
    {
        using var worker = Start(server);
        while (TitlesIn(server).Distinct().Count() < _said)
        {
            await server.NextRequestAsync("/messages", Limit);
        }

        using (var term = Process.Start("kill", ["-TERM", worker.Id.ToString(CultureInfo.InvariantCulture)]))
        {
            await term.WaitForExitAsync(Limit);
        }

        await worker.WaitForExitAsync(Limit);
        await using var database = await Database.OpenAsync(DatabaseFile, Limit);
        return await database.ReadAsync(Crew, session => new PostRepository(session).PendingAsync(), Limit);
    }

    private static IEnumerable<string> TitlesIn(StandInServer server) => server.Requests
        .Where(request => request.Method == "POST" && request.Path.EndsWith("/messages", StringComparison.Ordinal))
        .Select(request => request.Json!["embeds"]![0]!["title"]!.GetValue<string>());

    private Process Start(StandInServer server)
    {
        var worker = Worker.Start(new WorkerCall
        {
            Environment = new Dictionary<string, string>
            {
                ["CREWBOT_DATABASE"] = DatabaseFile,
                ["CREWBOT_DISCORD__TOKEN"] = server.Settings.Token,
                ["CREWBOT_DISCORD__APIBASEADDRESS"] = server.ApiAddress.ToString(),
            },
        });
        worker.StandardInput.Close(); // as a service has it
        return worker;
    }
}
