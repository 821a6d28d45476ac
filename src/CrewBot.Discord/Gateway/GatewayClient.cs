using System.Collections.Concurrent;
using CrewBot.Discord.Rest;
using Microsoft.Extensions.Logging;

namespace CrewBot.Discord.Gateway;

/// <summary>Runs every shard of this process.</summary>
internal sealed class GatewayClient(
    DiscordOptions options,
    DiscordApi api,
    EventIntake intake,
    SessionFile file,
    Func<IGatewayTransport> transports,
    TimeProvider clock,
    Random random,
    ILoggerFactory logs)
{
    private readonly ILogger<GatewayClient> _log = logs.CreateLogger<GatewayClient>();
    private readonly IReadOnlyDictionary<ShardId, GatewaySession> _saved = file.Take();
    private readonly ConcurrentDictionary<ShardId, GatewaySession> _sessions = new();
    private readonly SessionStarts _starts = new(api, clock, logs.CreateLogger<SessionStarts>());

    /// <summary>Stays connected until told to stop.</summary>
    /// <exception cref="DiscordFatalException">Nothing helps until a person changes something.</exception>
    public async Task RunAsync(CancellationToken stopping)
    {
        using var all = CancellationTokenSource.CreateLinkedTokenSource(stopping, api.TokenRefused);
        try
        {
            var shards = await ChooseShardsAsync(all.Token);
            _log.LogInformation("Connecting {Number} of {Count} shards", shards.Count, shards[0].Count);
            await Task.WhenAll(shards.Select(shard => RunAsync(shard, all)));
        }
        catch (OperationCanceledException) when (all.IsCancellationRequested)
        {
        }

        if (stopping.IsCancellationRequested)
        {
            file.Put(_sessions);
        }

        if (api.TokenRefused.IsCancellationRequested && !stopping.IsCancellationRequested)
        {
            throw TokenRefused.Exception();
        }
    }

    /// <summary>The configured shards, or those that the gateway advises. Asks until there is an answer.</summary>
    private async Task<IReadOnlyList<ShardId>> ChooseShardsAsync(CancellationToken stopping)
    {
        for (var attempt = 1; ; attempt++)
        {
            try
            {
                var advice = options.ShardCount is null ? await _starts.AskAsync(stopping) : null;
                var count = options.ShardCount ?? Math.Max(1, advice?.Shards ?? 1);
                return [.. (options.ShardIds ?? Enumerable.Range(0, count)).Select(id => new ShardId(id, count))];
            }
            catch (DiscordApiException noAdvice)
            {
                var wait = Backoff.Connect(attempt, random.NextDouble());
                _log.LogWarning(
                    "The platform cannot be reached; next try in {Seconds:0} s. {Reason}",
                    wait.TotalSeconds, noAdvice.Message);
                await Task.Delay(wait, clock, stopping);
            }
        }
    }

    private async Task RunAsync(ShardId id, CancellationTokenSource all)
    {
        var session = _sessions[id] = _saved.GetValueOrDefault(id) ?? new GatewaySession();
        var shard = new Shard(id, session, _starts, Open, clock, random, logs.CreateLogger<Shard>());
        try
        {
            await shard.RunAsync(all.Token);
        }
        catch (DiscordFatalException)
        {
            await all.CancelAsync();
            throw;
        }
    }

    private GatewayConnection Open(ShardId shard, GatewaySession session, Action onActive) =>
        new(
            transports(),
            shard,
            options.Token,
            session,
            intake,
            clock,
            random,
            logs.CreateLogger<GatewayConnection>())
        {
            OnActive = onActive,
        };
}
