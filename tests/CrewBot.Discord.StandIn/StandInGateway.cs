using System.Collections.Concurrent;
using System.Globalization;
using System.Text.Json.Nodes;
using System.Threading.Channels;
using Microsoft.AspNetCore.Http;

namespace CrewBot.Discord.StandIn;

/// <summary>The gateway's side of the protocol: hello, identify, heartbeats, resume with replay.</summary>
internal sealed class StandInGateway(StandInSettings settings) : IDisposable
{
    private const int LargestClientFrame = 4096;
    private const int BadToken = 4004;
    private const int TooLong = 4002;

    private readonly ConcurrentDictionary<string, StandInSession> _sessions = new();
    private readonly ConcurrentBag<GatewaySocket> _sockets = [];
    private readonly Channel<GatewaySocket> _connected = Channel.CreateUnbounded<GatewaySocket>();
    private readonly Channel<GatewaySocket> _active = Channel.CreateUnbounded<GatewaySocket>();
    private int _sessionNumber;

    // Shards come at once: each is counted whole.
    private int _identifies;
    private int _resumes;

    public ChannelReader<GatewaySocket> Connected => _connected.Reader;
    public ChannelReader<GatewaySocket> Active => _active.Reader;
    public GatewaySocket? Latest { get; private set; }
    public string ResumeAddress { get; set; } = "";
    public int Identifies => _identifies;
    public int Resumes => _resumes;

    public async Task ServeAsync(HttpContext context)
    {
        var userAgent = context.Request.Headers.UserAgent.ToString();
        if (userAgent.Length == 0 && settings.TurnsNamelessAway)
        {
            context.Response.StatusCode = StatusCodes.Status403Forbidden;
            return;
        }

        using var webSocket = await context.WebSockets.AcceptWebSocketAsync();
        var socket = new GatewaySocket(webSocket, userAgent, context.Request.QueryString.Value ?? "");
        _sockets.Add(socket);
        _connected.Writer.TryWrite(socket);
        if (settings.Greets)
        {
            await socket.SendAsync(
                10, new JsonObject { ["heartbeat_interval"] = settings.HeartbeatInterval.TotalMilliseconds });
        }

        var buffer = new byte[LargestClientFrame + 1];
        while (await socket.ReceiveAsync(buffer) is { } frame)
        {
            // A test that has seen a frame may change the settings: by then it has been answered by the old ones.
            await AnswerAsync(socket, frame);
            if (settings.Records)
            {
                socket.Record(frame);
            }
        }

        await socket.EndAsync();
    }

    public void Dispose()
    {
        foreach (var socket in _sockets)
        {
            socket.Dispose();
        }
    }

    private async Task AnswerAsync(GatewaySocket socket, JsonNode frame)
    {
        if (frame.ToJsonString().Length > LargestClientFrame)
        {
            await socket.CloseAsync(TooLong);
            return;
        }

        switch (frame["op"]!.GetValue<int>())
        {
            case 1 when settings.AcknowledgesHeartbeats:
                await socket.SendTextAsync("""{"op":11}""");
                break;
            case 2 when settings.AnswersOpening:
                await IdentifyAsync(socket, frame["d"]!);
                break;
            case 6 when settings.AnswersOpening:
                await ResumeAsync(socket, frame["d"]!);
                break;
        }
    }

    private async Task IdentifyAsync(GatewaySocket socket, JsonNode identify)
    {
        Interlocked.Increment(ref _identifies);
        if (identify["token"]!.GetValue<string>() != settings.Token)
        {
            await socket.CloseAsync(BadToken);
            return;
        }

        var number = Interlocked.Increment(ref _sessionNumber).ToString(CultureInfo.InvariantCulture);
        var session = new StandInSession($"session-{number}");
        _sessions[session.Id] = session;
        var ready = new JsonObject
        {
            ["v"] = 10,
            ["user"] = StandInData.BotUser(settings.ApplicationId),
            ["guilds"] = new JsonArray(),
            ["session_id"] = session.Id,
            ["resume_gateway_url"] = settings.NamesResumeAddress ? ResumeAddress : null,
            ["shard"] = identify["shard"]?.DeepClone(),
            ["application"] = new JsonObject { ["id"] = StandInData.Id(settings.ApplicationId), ["flags"] = 0 },
        };
        if (!settings.NamesResumeAddress)
        {
            ready.Remove("resume_gateway_url");
        }

        await OpenAsync(socket, session, session.Add("READY", ready.ToJsonString()));
    }

    private async Task ResumeAsync(GatewaySocket socket, JsonNode resume)
    {
        Interlocked.Increment(ref _resumes);
        var known = _sessions.TryGetValue(resume["session_id"]!.GetValue<string>(), out var session);
        if (!known || !settings.AcceptsResume)
        {
            await socket.SendAsync(9, JsonValue.Create(false));
            return;
        }

        foreach (var missed in session!.After(resume["seq"]!.GetValue<long>()))
        {
            await socket.SendTextAsync(missed);
        }

        await OpenAsync(socket, session, session.Add("RESUMED", "{}"));
    }

    private async Task OpenAsync(GatewaySocket socket, StandInSession session, string opening)
    {
        // A client that has seen the opening may be sent more at once: by then this is the connection to send it on.
        socket.Session = session;
        Latest = socket;
        await socket.SendTextAsync(opening);
        _active.Writer.TryWrite(socket);
    }
}
