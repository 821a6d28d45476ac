using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using CrewBot.Discord.Wire;
using Microsoft.Extensions.Logging;

namespace CrewBot.Discord.Gateway;

/// <summary>One socket from connect to close. All of its state dies with it, except the session.</summary>
internal sealed class GatewayConnection(
    IGatewayTransport transport,
    ShardId shard,
    BotToken token,
    GatewaySession session,
    EventIntake intake,
    TimeProvider clock,
    Random random,
    ILogger log) : IDisposable
{
    private readonly CancellationTokenSource _ending = new();
    private readonly SemaphoreSlim _sending = new(1, 1);
    private readonly MalformedLog _malformed = new(log);
    private ConnectionEnd? _end;
    private Heartbeat? _heartbeat;
    private Task _beating = Task.CompletedTask;
    private Task _closing = Task.CompletedTask;
    private Snowflake? _application;
    private ITimer? _deadline;

    /// <summary>The furthest stage that was reached.</summary>
    public ConnectionStage Reached { get; private set; }

    /// <summary>When the session became active, by the monotonic clock.</summary>
    public long? ActiveSince { get; private set; }

    /// <summary>Called once the session is active.</summary>
    public Action OnActive { get; init; } = static () => { };

    /// <summary>Runs until the connection is over; never throws for anything the network does.</summary>
    public async Task<ConnectionEnd> RunAsync(Uri address, CancellationToken stopping)
    {
        using var timer = clock.CreateTimer(_ => OnDeadline(), null, Timeout.InfiniteTimeSpan, Timeout.InfiniteTimeSpan);
        _deadline = timer;
        try
        {
            if (!await TryConnectAsync(address, stopping))
            {
                return stopping.IsCancellationRequested
                    ? ConnectionEnd.Stopped
                    : new ConnectionEnd(NextStep.Resume, "the gateway could not be reached");
            }

            using var stop = stopping.UnsafeRegister(_ => End(ConnectionEnd.Stopped), null);
            return await ReceiveAsync();
        }
        finally
        {
            await _ending.CancelAsync();
            transport.Abort();
            await Task.WhenAll(_beating, _closing);
        }
    }

    public void Dispose()
    {
        _ending.Dispose();
        _sending.Dispose();
        transport.Dispose();
    }

    private async Task<bool> TryConnectAsync(Uri address, CancellationToken stopping)
    {
        using var timeout = new CancellationTokenSource(StageDeadlines.Of(ConnectionStage.Connecting), clock);
        using var either = CancellationTokenSource.CreateLinkedTokenSource(stopping, timeout.Token);
        try
        {
            await transport.ConnectAsync(GatewayAddress.Of(address), either.Token);
            Enter(ConnectionStage.AwaitingHello);
            return true;
        }
        catch (Exception fault) when (fault is not OutOfMemoryException)
        {
            // Name resolution, TLS, refusal, time-out: on an outage every one of them is an ordinary outcome.
            log.LogInformation("Shard {Shard}: no connection: {Reason}", shard, fault.Message);
            return false;
        }
    }

    private async Task<ConnectionEnd> ReceiveAsync()
    {
        while (true)
        {
            var message = await transport.ReceiveAsync(CancellationToken.None);
            if (message.IsClosed)
            {
                return _end ?? CloseCodes.Read(message.CloseCode);
            }

            if (FrameReader.TryRead(message.Payload, out var frame))
            {
                await ReadAsync(frame);
            }
            else
            {
                _malformed.Report("frame");
            }
        }
    }

    private async Task ReadAsync(GatewayFrame frame)
    {
        switch (frame.Operation)
        {
            case GatewayOperation.Dispatch:
                Dispatch(frame);
                break;
            case GatewayOperation.Hello when _heartbeat is null:
                await GreetAsync(frame);
                break;
            case GatewayOperation.Heartbeat:
                await BeatAsync(_ending.Token);
                break;
            case GatewayOperation.HeartbeatAck:
                _heartbeat?.Acknowledge();
                break;
            case GatewayOperation.Reconnect:
                End(new ConnectionEnd(NextStep.Resume, "the gateway asked to reconnect"));
                break;
            case GatewayOperation.InvalidSession:
                End(InvalidSession(frame));
                break;
            default:
                log.LogDebug("Shard {Shard}: unknown operation {Operation} passed over", shard, frame.Operation);
                break;
        }
    }

    private ConnectionEnd InvalidSession(GatewayFrame frame) =>
        frame.Data.Span.SequenceEqual("true"u8)
            ? new ConnectionEnd(NextStep.Resume, "the gateway wants the session resumed")
            : new ConnectionEnd(
                NextStep.Identify,
                "the session is invalid",
                TimeSpan.FromSeconds(1 + (4 * random.NextDouble()))); // the documentation asks for 1 to 5 s

    private async Task GreetAsync(GatewayFrame frame)
    {
        if (Read(frame, WireJson.Default.Hello)?.HeartbeatInterval is not ({ } interval and > 0 and < int.MaxValue))
        {
            End(new ConnectionEnd(NextStep.Resume, "the greeting gave no heartbeat interval"));
            return;
        }

        _heartbeat = new Heartbeat(
            TimeSpan.FromMilliseconds(interval),
            BeatAsync,
            () => End(new ConnectionEnd(NextStep.Resume, "heartbeats went unacknowledged")),
            clock,
            log);
        _beating = _heartbeat.RunAsync(random.NextDouble(), _ending.Token);
        if (session.CanResume)
        {
            Enter(ConnectionStage.Resuming);
            await SendAsync(OutgoingFrames.Resume(token, session), _ending.Token);
        }
        else
        {
            Enter(ConnectionStage.Identifying);
            await SendAsync(OutgoingFrames.Identify(token, shard), _ending.Token);
        }
    }

    private void Dispatch(GatewayFrame frame)
    {
        if (_end?.Next is NextStep.Stop)
        {
            return; // not counted either: a later resume brings it again
        }

        if (frame.Sequence is { } sequence)
        {
            session.Count(sequence);
        }

        switch (frame.Event)
        {
            case GatewayEvents.Interaction when Read(frame, WireJson.Default.Interaction) is { } interaction:
                intake.Offer(new ReceivedInteraction(interaction, interaction.ApplicationId ?? _application, clock.GetTimestamp())
                {
                    WasMissed = Reached is ConnectionStage.Resuming,
                });
                break;
            case GatewayEvents.Message when Read(frame, WireJson.Default.Message) is { GuildId: null } message:
                intake.Offer(message);
                break;
            case GatewayEvents.Ready when Read(frame, WireJson.Default.Ready) is { } ready:
                _application = ready.Application?.Id;
                session.Begin(ready.SessionId, ready.ResumeGatewayUrl);
                Activate("started a session");
                break;
            case GatewayEvents.Resumed:
                Activate("resumed its session");
                break;
        }
    }

    private void Activate(string what)
    {
        Enter(ConnectionStage.Active);
        ActiveSince = clock.GetTimestamp();
        log.LogInformation("Shard {Shard} {What}", shard, what);
        OnActive();
    }

    private void Enter(ConnectionStage stage)
    {
        if (_end is null)
        {
            Reached = stage;
            _deadline!.Change(StageDeadlines.Of(stage), Timeout.InfiniteTimeSpan);
        }
    }

    private void OnDeadline()
    {
        if (_end is null)
        {
            End(new ConnectionEnd(NextStep.Resume, $"nothing happened while {Reached}"));
        }
        else
        {
            transport.Abort();
        }
    }

    /// <summary>Settles why the connection ends and says goodbye; the receive loop sees the other end's close.</summary>
    private void End(ConnectionEnd why)
    {
        if (Interlocked.CompareExchange(ref _end, why, null) is not null)
        {
            return;
        }

        _deadline!.Change(StageDeadlines.Of(ConnectionStage.Ended), Timeout.InfiniteTimeSpan);
        _closing = CloseAsync();
    }

    private async Task CloseAsync()
    {
        await _sending.WaitAsync();
        try
        {
            await _ending.CancelAsync();
            await transport.CloseAsync(CloseCodes.KeepSession, CancellationToken.None);
        }
        finally
        {
            _sending.Release();
        }
    }

    private Task BeatAsync(CancellationToken cancellationToken) =>
        SendAsync(OutgoingFrames.Heartbeat(session.Sequence), cancellationToken);

    private async Task SendAsync(ReadOnlyMemory<byte> frame, CancellationToken cancellationToken)
    {
        await _sending.WaitAsync(CancellationToken.None);
        try
        {
            if (!cancellationToken.IsCancellationRequested)
            {
                await transport.SendAsync(frame, CancellationToken.None); // cancelling a send would break the socket
            }
        }
        finally
        {
            _sending.Release();
        }
    }

    private T? Read<T>(GatewayFrame frame, JsonTypeInfo<T> shape)
        where T : class
    {
        T? payload = null;
        try
        {
            payload = JsonSerializer.Deserialize(frame.Data.Span, shape);
        }
        catch (JsonException)
        {
            // Reported below, like a payload of null.
        }

        if (payload is null)
        {
            _malformed.Report(frame.Event ?? frame.Operation.ToString());
        }

        return payload;
    }
}
