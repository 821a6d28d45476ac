using CrewBot.Discord.Gateway;
using CrewBot.Discord.Rest;
using CrewBot.Discord.StandIn;
using CrewBot.Discord.Tests.Fakes;
using Microsoft.Extensions.Logging;

namespace CrewBot.Discord.Tests.Gateway;

/// <summary>The network goes away for long: how a shard spends the time, and how it comes back.</summary>
public sealed class OutageTests
{
    private static readonly TimeSpan ConnectDeadline = StageDeadlines.Of(ConnectionStage.Connecting);
    private static readonly TimeSpan LongestWait = TimeSpan.FromSeconds(60);

    private static CancellationToken Limit => TestContext.Current.CancellationToken;

    [Fact(Timeout = 30_000)]
    public async Task RunAsync_NetworkIsAwayForAnHour_TriesOnceAMinuteAtLastAndResumesWhereItWas()
    {
        var clock = new WatchedClock();
        using var logs = new LogBook();
        await using var server = await StandInServer.StartAsync();
        var options = new DiscordOptions { Token = new BotToken(server.Settings.Token), ApiBaseAddress = server.ApiAddress };
        using var rest = new RestClient(ApiConnection.Create(), options, clock, new Logger<RestClient>(logs));
        var starts = new SessionStarts(new DiscordApi(rest), clock, new Logger<SessionStarts>(logs));
        await starts.AskAsync(Limit); // as before the outage: the general place is known
        using var intake = new EventIntake(new RecordingHandler(), logs.CreateLogger<EventIntake>());
        var session = new GatewaySession();
        session.Begin("s-1", "wss://resume.invalid");
        session.Count(17);

        var (attempts, isBack, back) = (0, false, new ScriptedTransport());
        GatewayConnection Open(ShardId id, GatewaySession known, Action onActive)
        {
            attempts++;
            var transport = isBack ? back : new ScriptedTransport { ConnectFault = new HttpRequestException("no such host") };
            return new GatewayConnection(transport, id, options.Token, known, intake, clock, new FixedRandom(1), logs) { OnActive = onActive };
        }

        using var stopping = new CancellationTokenSource();
        var shard = new Shard(new ShardId(0, 1), session, starts, Open, clock, new FixedRandom(1), new Logger<Shard>(logs));
        var run = shard.RunAsync(stopping.Token);
        var began = clock.GetUtcNow();
        while (clock.GetUtcNow() - began < TimeSpan.FromHours(1))
        {
            var wait = TimeSpan.Zero;
            await clock.TimerAsync(due => due > TimeSpan.Zero && due <= LongestWait && due != ConnectDeadline && (wait = due) == due, Limit);
            clock.Advance(wait);
        }

        isBack = true;
        clock.Advance(LongestWait);
        await back.Connected;
        back.Hello();
        var resume = (await back.ExpectAsync(6, Limit))["d"]!;

        Assert.Equal(("s-1", 17), (resume["session_id"]!.GetValue<string>(), resume["seq"]!.GetValue<int>()));
        Assert.InRange(attempts, 60, 80);
        Assert.InRange(logs.Lines.Count(line => line.Contains("is off line", StringComparison.Ordinal)), 60, 80);
        Assert.Equal(0, server.Identifies);
        await stopping.CancelAsync();
        await run;
    }
}
