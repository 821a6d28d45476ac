using CrewBot.Discord.Rest;
using Microsoft.Extensions.Logging;

namespace CrewBot.Discord.Gateway;

/// <summary>Keeps one shard connected: one connection after the other, until told to stop or nothing more helps.</summary>
internal sealed class Shard(
    ShardId id,
    GatewaySession session,
    SessionStarts starts,
    Func<ShardId, GatewaySession, Action, GatewayConnection> open,
    TimeProvider clock,
    Random random,
    ILogger<Shard> log)
{
    private readonly ReconnectPace _pace = new();

    /// <exception cref="DiscordFatalException">Nothing helps until a person changes something.</exception>
    public async Task RunAsync(CancellationToken stopping)
    {
        try
        {
            while (!stopping.IsCancellationRequested)
            {
                var end = session.CanResume ? await ResumeAsync(stopping) : await IdentifyAsync(stopping);
                await SettleAsync(end, stopping);
            }
        }
        catch (OperationCanceledException) when (stopping.IsCancellationRequested)
        {
        }
    }

    private async Task SettleAsync(ConnectionEnd end, CancellationToken stopping)
    {
        if (end.Next is NextStep.Stop)
        {
            return;
        }

        if (end.Next is NextStep.GiveUp)
        {
            throw new DiscordFatalException(end.Reason);
        }

        log.LogWarning("Shard {Shard} is off line: {Reason}", id, end.Reason);
        if (end.Next is NextStep.Identify || _pace.SessionIsLost)
        {
            session.Forget();
        }

        var wait = end.Pause + _pace.Next(identifying: !session.CanResume, random.NextDouble());
        await Task.Delay(wait, clock, stopping);
    }

    private async Task<ConnectionEnd> ResumeAsync(CancellationToken stopping)
    {
        var own = _pace.ResumePlaceFailed ? null : session.ResumeAddress;
        try
        {
            return await ConnectAsync(own ?? await starts.PlaceAsync(stopping), static () => { }, stopping);
        }
        catch (DiscordApiException noAdvice)
        {
            return new ConnectionEnd(NextStep.Resume, noAdvice.Message);
        }
    }

    private async Task<ConnectionEnd> IdentifyAsync(CancellationToken stopping)
    {
        try
        {
            using var turn = await starts.TakeTurnAsync(id, stopping);
            return await ConnectAsync(starts.Address!, turn.Dispose, stopping);
        }
        catch (DiscordApiException noAdvice)
        {
            return new ConnectionEnd(NextStep.Identify, noAdvice.Message);
        }
    }

    private async Task<ConnectionEnd> ConnectAsync(Uri place, Action onActive, CancellationToken stopping)
    {
        var identifying = !session.CanResume;
        using var connection = open(id, session, onActive);
        var end = await connection.RunAsync(place, stopping);
        var activeFor = connection.ActiveSince is { } since ? clock.GetElapsedTime(since) : (TimeSpan?)null;
        if (identifying && connection.Reached >= ConnectionStage.Identifying)
        {
            _pace.CountIdentify();
        }

        _pace.Record(connection.Reached, activeFor);
        return end;
    }
}
