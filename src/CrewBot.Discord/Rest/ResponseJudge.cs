using System.Net;
using CrewBot.Discord.Wire;

namespace CrewBot.Discord.Rest;

/// <summary>
/// Reads an answer: done, refused, worth another attempt, or a sign that the bot must hold still. Counts what could get
/// the bot's address banned and stops traffic long before.
/// </summary>
internal sealed class ResponseJudge(TimeProvider clock) : IDisposable
{
    private static readonly TimeSpan EdgeBlock = TimeSpan.FromMinutes(1);
    private static readonly TimeSpan UnstatedWait = TimeSpan.FromSeconds(1);
    private static readonly TimeSpan MostJitter = TimeSpan.FromMilliseconds(50);

    private readonly InvalidRequestWatch _invalid = new(clock);
    private readonly CancellationTokenSource _tokenRefused = new();

    public CancellationToken TokenRefused => _tokenRefused.Token;

    /// <summary>The reason why a route may not be called now, if there is one.</summary>
    public DiscordApiException? Forbids(Route route)
    {
        if (_tokenRefused.IsCancellationRequested && !route.ByInteractionToken)
        {
            return new DiscordApiException(route, "not sent: the platform has refused the bot token");
        }

        return _invalid.Allows(route)
            ? null
            : new DiscordApiException(route, $"not sent: {_invalid.InTheLastTenMinutes} refusals in ten minutes");
    }

    public Verdict Judge(RestCall call, HttpResponseMessage response, ReadOnlyMemory<byte> body, RateLimitHeaders limits)
    {
        if (response.IsSuccessStatusCode)
        {
            return new Verdict(Success(call, response, body));
        }

        if (response.StatusCode is HttpStatusCode.TooManyRequests)
        {
            return Limited(call, response, body, limits);
        }

        var refusal = ResponseReader.Refusal(call.Route, response, body.Span);
        if (call.Attempts > 1 && call.Route.ProvesDone(response.StatusCode, refusal.Code))
        {
            return new Verdict(Attempt.Done(ReadOnlyMemory<byte>.Empty));
        }

        return Faults.IsPassing(response.StatusCode) ? Passing(call, refusal) : Refused(call, response, refusal, limits);
    }

    public void Dispose() => _tokenRefused.Dispose();

    private static Attempt Success(RestCall call, HttpResponseMessage response, ReadOnlyMemory<byte> body)
    {
        var readable = body.IsEmpty || ResponseReader.IsJson(response);
        return readable
            ? Attempt.Done(body)
            : call.Failed(new DiscordApiException(
                call.Route, response.StatusCode, code: 0, ResponseReader.NotJson(response, body.Span)));
    }

    private static Verdict Passing(RestCall call, DiscordApiException refusal)
    {
        var safe = call.Route.Repetition is Repetition.Always || Faults.CertainlyDidNotRun(refusal.Status!.Value);
        return new Verdict(safe ? call.Retry(refusal) : call.Failed(refusal));
    }

    private Verdict Refused(
        RestCall call, HttpResponseMessage response, DiscordApiException refusal, RateLimitHeaders limits)
    {
        if (response.StatusCode is HttpStatusCode.Unauthorized or HttpStatusCode.Forbidden)
        {
            _invalid.Count();
        }

        if (response.StatusCode is HttpStatusCode.Unauthorized && !call.Route.ByInteractionToken)
        {
            _tokenRefused.Cancel();
        }

        var blockedAtTheEdge = response.StatusCode is HttpStatusCode.Forbidden && !ResponseReader.IsJson(response);
        return new Verdict(call.Failed(refusal))
        {
            PauseEverything = blockedAtTheEdge ? limits.RetryAfter ?? EdgeBlock : null,
        };
    }

    private Verdict Limited(
        RestCall call, HttpResponseMessage response, ReadOnlyMemory<byte> body, RateLimitHeaders limits)
    {
        if (!limits.Shared)
        {
            _invalid.Count();
        }

        var stated = ResponseReader.TryRead(response, body.Span, WireJson.Default.RateLimitBody);
        var fromTheEdge = stated is null && !limits.Known;
        var wait = Longest(limits.RetryAfter, RateLimitHeaders.Wait(stated?.RetryAfter))
            ?? (fromTheEdge ? EdgeBlock : UnstatedWait);
        wait += MostJitter * Random.Shared.NextDouble();

        var everything = fromTheEdge || limits.Global || stated?.Global is true;
        return new Verdict(Later(call, wait, everything))
        {
            PauseEverything = everything ? wait : null,
            PauseBucket = everything ? null : wait,
        };
    }

    /// <summary>
    /// A call that stands at a paused gate waits there, in its order; one that no gate holds waits by itself.
    /// </summary>
    private static Attempt Later(RestCall call, TimeSpan wait, bool everything)
    {
        var limited = DiscordApiException.Limited(call.Route, wait);
        if (wait > call.PatienceLeft)
        {
            return call.Failed(limited);
        }

        var heldByAGate = everything ? !call.Route.ByInteractionToken : !call.Route.Unbucketed;
        return call.Retry(limited, heldByAGate ? TimeSpan.Zero : wait);
    }

    private static TimeSpan? Longest(TimeSpan? first, TimeSpan? second) =>
        first is null ? second : second is null || first > second ? first : second;
}
