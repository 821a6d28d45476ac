using System.Net;
using CrewBot.Discord.Rest;
using CrewBot.Discord.Wire;
using Microsoft.Extensions.Logging;

namespace CrewBot.Discord.Gateway;

/// <summary>
/// Asks the API where and how to start a session, and keeps inside the daily number of starts: using them up would
/// make the platform reset the token.
/// </summary>
internal sealed class SessionStarts(DiscordApi api, TimeProvider clock, ILogger<SessionStarts> log)
{
    private const int FewLeft = 100;
    private const int UsualConcurrency = 1;
    private static readonly TimeSpan SpacingWhenFewAreLeft = TimeSpan.FromMinutes(15);
    private static readonly TimeSpan WholeDay = TimeSpan.FromDays(1);

    private readonly IdentifyGate _gate = new(clock);
    private long? _lastStart;

    /// <summary>Where sessions start, as last advised; also where to resume if no other place is known.</summary>
    public Uri? Address { get; private set; }

    /// <exception cref="DiscordFatalException">The token was refused.</exception>
    /// <exception cref="DiscordApiException">No answer, or an answer that gives no address.</exception>
    public async Task<GatewayAdvice> AskAsync(CancellationToken cancellationToken)
    {
        GatewayAdvice advice;
        try
        {
            advice = await api.GetGatewayAdviceAsync(cancellationToken);
        }
        catch (DiscordApiException refused) when (refused.Status is HttpStatusCode.Unauthorized or HttpStatusCode.BadRequest)
        {
            throw TokenRefused.Exception(refused);
        }

        Address = Uri.TryCreate(advice.Url, UriKind.Absolute, out var address) && address.Scheme is "ws" or "wss"
            ? address
            : throw new DiscordApiException(Routes.GatewayAdvice, "gave no gateway address");
        return advice;
    }

    /// <summary>Where to resume when a session names no place that can be reached.</summary>
    /// <exception cref="DiscordFatalException">The token was refused.</exception>
    /// <exception cref="DiscordApiException">No answer, or an answer that gives no address.</exception>
    public async Task<Uri> PlaceAsync(CancellationToken cancellationToken)
    {
        if (Address is null)
        {
            await AskAsync(cancellationToken);
        }

        return Address!;
    }

    /// <summary>Waits until the shard may start a session. Dispose of the turn once its outcome is known.</summary>
    public async Task<IDisposable> TakeTurnAsync(ShardId shard, CancellationToken cancellationToken)
    {
        var advice = await AskAsync(cancellationToken);
        var limit = advice.SessionStartLimit;
        var wait = limit?.Remaining switch
        {
            null or >= FewLeft => TimeSpan.Zero,
            <= 0 => limit.ResetAfter is { } ms and >= 0 ? TimeSpan.FromMilliseconds(ms) : WholeDay,
            _ when _lastStart is { } last => SpacingWhenFewAreLeft - clock.GetElapsedTime(last),
            _ => TimeSpan.Zero,
        };
        if (wait > TimeSpan.Zero)
        {
            log.LogWarning(
                "Only {Remaining} session starts are left for today; shard {Shard} waits {Minutes:0} min",
                limit!.Remaining, shard, wait.TotalMinutes);
            await Task.Delay(wait, clock, cancellationToken);
        }

        var turn = await _gate.EnterAsync(shard, limit?.MaxConcurrency ?? UsualConcurrency, cancellationToken);
        _lastStart = clock.GetTimestamp();
        return turn;
    }
}
