using System.Net.Http.Headers;
using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using Microsoft.Extensions.Logging;

namespace CrewBot.Discord.Rest;

/// <summary>
/// Sends a request: waits for its rate limits, gives each attempt its own time-out, repeats what is safe to repeat.
/// </summary>
internal sealed class RestClient(HttpClient http, DiscordOptions options, TimeProvider clock, ILogger<RestClient> log)
    : IDisposable
{
    private static readonly TimeSpan OrdinaryTimeout = TimeSpan.FromSeconds(10);
    private static readonly TimeSpan UploadTimeout = TimeSpan.FromSeconds(30);
    private static readonly TimeSpan FirstAnswerTimeout = TimeSpan.FromSeconds(1.5);

    // Addresses are put together as text: resolving each against the base costs more than all the rest of it.
    private readonly string _root = new Uri(options.ApiBaseAddress, ".").AbsoluteUri;

    private readonly AuthenticationHeaderValue _authorization = new("Bot", options.Token.Value);
    private readonly RateLimits _limits = new(clock);
    private readonly RetryPipelines _pipelines = new(clock);
    private readonly ResponseJudge _judge = new(clock);

    /// <summary>Cancelled once the platform has refused the bot token: from then on nothing goes out with it.</summary>
    public CancellationToken TokenRefused => _judge.TokenRefused;

    public Task SendAsync(RestRequest request, CancellationToken cancellationToken) => RunAsync(request, cancellationToken);

    /// <exception cref="DiscordApiException">Refused, not come through, or answered with something unreadable.</exception>
    public async Task<T> SendAsync<T>(RestRequest request, JsonTypeInfo<T> shape, CancellationToken cancellationToken)
        where T : class
    {
        var body = await RunAsync(request, cancellationToken);
        try
        {
            return JsonSerializer.Deserialize(body.Span, shape)
                ?? throw new DiscordApiException(request.Route, "answered null");
        }
        catch (JsonException)
        {
            throw new DiscordApiException(request.Route, "answered with JSON that cannot be read");
        }
    }

    public void Dispose()
    {
        _judge.Dispose();
        http.Dispose();
    }

    private async Task<ReadOnlyMemory<byte>> RunAsync(RestRequest request, CancellationToken cancellationToken)
    {
        if (request.Patience <= TimeSpan.Zero)
        {
            throw new DiscordApiException(request.Route, "not sent: its time was over");
        }

        var call = new RestCall(request, clock);
        using var patience = new CancellationTokenSource(request.Patience, clock);
        using var either = CancellationTokenSource.CreateLinkedTokenSource(cancellationToken, patience.Token);
        try
        {
            var result = await _pipelines.For(request.Route).ExecuteAsync(
                static (state, token) => state.Client.AttemptAsync(state.Call, token),
                (Client: this, Call: call),
                either.Token);
            return result.Failure is null ? result.Body : throw result.Failure;
        }
        catch (OperationCanceledException) when (!cancellationToken.IsCancellationRequested)
        {
            throw call.LastFailure
                ?? new DiscordApiException(request.Route, $"no answer within {request.Patience.TotalSeconds:0.#} s");
        }
    }

    private async ValueTask<Attempt> AttemptAsync(RestCall call, CancellationToken cancellationToken)
    {
        call.Begin();
        if (_judge.Forbids(call.Route) is { } stop)
        {
            return call.Failed(stop);
        }

        Bucket? bucket;
        try
        {
            bucket = await _limits.EnterAsync(call.Route, call.PatienceLeft, cancellationToken);
        }
        catch (DiscordApiException limited)
        {
            return call.Failed(limited);
        }

        RateLimitHeaders? answer = null;
        try
        {
            using var timeout = new CancellationTokenSource(TimeoutOf(call.Request), clock);
            using var either = CancellationTokenSource.CreateLinkedTokenSource(cancellationToken, timeout.Token);
            using var message = MessageFor(call.Request);
            using var response = await http.SendAsync(message, either.Token);
            answer = RateLimitHeaders.Read(response.Headers);
            var body = await response.Content.ReadAsByteArrayAsync(either.Token);
            var verdict = _judge.Judge(call, response, body, answer.Value);
            Pause(verdict, bucket);
            return verdict.Attempt;
        }
        catch (HttpRequestException fault)
        {
            return Broken(call, Faults.Describe(fault), Faults.CertainlyDidNotRun(fault));
        }
        catch (OperationCanceledException) when (!cancellationToken.IsCancellationRequested)
        {
            return Broken(call, $"no answer within {TimeoutOf(call.Request).TotalSeconds:0.#} s", didNotRun: false);
        }
        finally
        {
            if (bucket is not null)
            {
                _limits.Name(call.Route, bucket, answer?.Bucket);
                bucket.Leave(answer);
            }
        }
    }

    private void Pause(Verdict verdict, Bucket? bucket)
    {
        if (verdict.PauseEverything is { } everything)
        {
            log.LogWarning("All requests pause for {Seconds:0.#} s: {Reason}", everything.TotalSeconds, verdict.Reason);
            _limits.PauseEverything(everything);
        }
        else if (verdict.PauseBucket is { } one)
        {
            log.LogInformation("Paused for {Seconds:0.###} s: {Reason}", one.TotalSeconds, verdict.Reason);
            bucket?.Pause(one);
        }
    }

    private Attempt Broken(RestCall call, string reason, bool didNotRun)
    {
        var failure = new DiscordApiException(call.Route, reason);
        log.LogInformation("Attempt {Attempt} failed: {Reason}", call.Attempts, failure.Message);
        return didNotRun || call.Route.Repetition is Repetition.Always ? call.Retry(failure) : call.Failed(failure);
    }

    private HttpRequestMessage MessageFor(RestRequest request)
    {
        var message = new HttpRequestMessage(request.Route.Method, new Uri(_root + request.Route.Path))
        {
            Version = http.DefaultRequestVersion,
            VersionPolicy = http.DefaultVersionPolicy,
            Content = RequestContent.Of(request),
        };
        if (!request.Route.ByInteractionToken)
        {
            message.Headers.Authorization = _authorization;
        }

        return message;
    }

    private static TimeSpan TimeoutOf(RestRequest request) =>
        request.Route.Unbucketed ? FirstAnswerTimeout
        : request.Files.Count > 0 ? UploadTimeout
        : OrdinaryTimeout;
}
