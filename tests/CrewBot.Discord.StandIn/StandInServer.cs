using System.Collections.Concurrent;
using System.Diagnostics;
using System.Globalization;
using System.Net;
using System.Text.Json.Nodes;
using System.Threading.Channels;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Http;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Hosting;
using Microsoft.Extensions.Logging;

namespace CrewBot.Discord.StandIn;

/// <summary>
/// Speaks the platform's HTTP API and gateway on a loopback port, well or, when told to, badly. Written from the
/// published protocol alone: it shares no code with the client.
/// </summary>
public sealed class StandInServer : IAsyncDisposable
{
    // Kinds of answer, as the platform numbers them.
    private const int NewMessage = 4;
    private const int DeferredMessage = 5;
    private const int DeferredUpdate = 6;
    private const int UpdatedMessage = 7;

    private const string ApiPath = "/api/v10/";
    private const string GatewayPath = "/gateway";

    private readonly WebApplication _app;
    private readonly StandInApi _api;
    private readonly StandInGateway _gateway;
    private readonly Channel<string> _accepted = Channel.CreateUnbounded<string>();
    private readonly Channel<RecordedRequest> _requests = Channel.CreateUnbounded<RecordedRequest>();

    private StandInServer(StandInSettings settings, int port)
    {
        Settings = settings;
        _api = new StandInApi(settings);
        _gateway = new StandInGateway(settings);
        Interactions = new InteractionMaker(settings.ApplicationId);

        var builder = WebApplication.CreateSlimBuilder();
        builder.Logging.ClearProviders();
        builder.WebHost.ConfigureKestrel(kestrel => kestrel.Listen(IPAddress.Loopback, port));
        builder.Services.Configure<HostOptions>(host => host.ShutdownTimeout = TimeSpan.FromMilliseconds(100));
        _app = builder.Build();
        _app.UseWebSockets();
        _app.Run(ServeAsync);
    }

    public StandInSettings Settings { get; }
    public FaultPlan Faults { get; } = new();
    public InteractionMaker Interactions { get; }

    /// <summary>Base address of the API, with its version.</summary>
    public Uri ApiAddress { get; private set; } = null!;

    /// <summary>Every request so far, in the order of arrival.</summary>
    public ConcurrentQueue<RecordedRequest> Requests { get; } = new();

    /// <summary>Told of each first answer that was accepted, by its path.</summary>
    public Action<string> OnAccepted { get; set; } = static _ => { };

    /// <summary>Interactions that have got their first answer.</summary>
    public ICollection<string> AnsweredInteractions => _api.Answered;

    public int MessagesCreated => _api.MessagesCreated;
    public int Identifies => _gateway.Identifies;
    public int Resumes => _gateway.Resumes;

    /// <summary>The connection that was active last.</summary>
    public GatewaySocket? LatestSocket => _gateway.Latest;

    public static async Task<StandInServer> StartAsync(StandInSettings? settings = null, int port = 0)
    {
        var server = new StandInServer(settings ?? new StandInSettings(), port);
        await server._app.StartAsync();
        var root = new Uri(server._app.Urls.Single());
        server.ApiAddress = new Uri(root, ApiPath);
        server._api.GatewayAddress = $"ws://{root.Authority}{GatewayPath}";
        server._gateway.ResumeAddress = $"ws://{root.Authority}{GatewayPath}/resume";
        return server;
    }

    /// <summary>The next connection that a client opens.</summary>
    public ValueTask<GatewaySocket> NextConnectionAsync(CancellationToken cancellationToken) =>
        _gateway.Connected.ReadAsync(cancellationToken);

    /// <summary>The next connection that has identified or resumed.</summary>
    public ValueTask<GatewaySocket> NextActiveAsync(CancellationToken cancellationToken) =>
        _gateway.Active.ReadAsync(cancellationToken);

    /// <summary>The next request whose path contains the text; others before it are passed over.</summary>
    public async Task<RecordedRequest> NextRequestAsync(string pathPart, CancellationToken cancellationToken)
    {
        while (true)
        {
            var request = await _requests.Reader.ReadAsync(cancellationToken);
            if (request.Path.Contains(pathPart, StringComparison.Ordinal))
            {
                return request;
            }
        }
    }

    /// <summary>
    /// Waits for what an interaction is answered in the end: on a busy machine the answer may be put off first and then
    /// come as an edit, which is given here as the update or message that it amounts to.
    /// </summary>
    public async Task<JsonNode> NextAnswerAsync(JsonNode interaction, CancellationToken cancellationToken)
    {
        var first = (await NextRequestAsync($"interactions/{interaction["id"]}/", cancellationToken)).Json!;
        var type = first["type"]!.GetValue<int>();
        if (type is not (DeferredMessage or DeferredUpdate))
        {
            return first;
        }

        var edit = await NextRequestAsync($"{interaction["token"]}/messages/@original", cancellationToken);
        var data = edit.Json!.DeepClone().AsObject();
        if (first["data"]?["flags"] is { } flags)
        {
            data["flags"] = flags.DeepClone();
        }

        return new JsonObject { ["type"] = type == DeferredUpdate ? UpdatedMessage : NewMessage, ["data"] = data };
    }

    /// <summary>Waits until another interaction's first answer has been accepted.</summary>
    public ValueTask<string> NextAnsweredAsync(CancellationToken cancellationToken) =>
        _accepted.Reader.ReadAsync(cancellationToken);

    /// <summary>Sends an event on a connection and keeps it for a resume.</summary>
    public static Task DispatchAsync(GatewaySocket socket, string name, JsonNode data) =>
        socket.SendTextAsync(socket.Session!.Add(name, data.ToJsonString()));

    public async ValueTask DisposeAsync()
    {
        await _app.DisposeAsync();
        _gateway.Dispose();
    }

    private async Task ServeAsync(HttpContext context)
    {
        if (context.WebSockets.IsWebSocketRequest)
        {
            await _gateway.ServeAsync(context);
            return;
        }

        var target = context.Request.Path.Value! + context.Request.QueryString.Value;
        if (!target.StartsWith(ApiPath, StringComparison.Ordinal))
        {
            context.Response.StatusCode = StatusCodes.Status404NotFound;
            return;
        }

        var path = target[ApiPath.Length..];
        if (!Settings.Records && IsCallback(path) && Faults.Take("POST", path) is var fault)
        {
            await AcceptUnreadAsync(context, path, fault);
            return;
        }

        var request = await RequestReader.ReadAsync(context, path, Stopwatch.GetTimestamp());
        if (Settings.Records)
        {
            Requests.Enqueue(request);
            _requests.Writer.TryWrite(request);
        }

        await AnswerAsync(context, request, Faults.Take(request.Method, path));
    }

    // Some clients add a query to it.
    private static bool IsCallback(string path) => path.Split('?')[0].EndsWith("/callback", StringComparison.Ordinal);

    /// <summary>Takes a first answer without looking into it, so that long runs measure the client and not this.</summary>
    private async Task AcceptUnreadAsync(HttpContext context, string path, CannedReply? fault)
    {
        await context.Request.BodyReader.CopyToAsync(Stream.Null);
        if (fault is not null)
        {
            await AnswerCannedAsync(context, fault);
            return;
        }

        context.Response.StatusCode = StatusCodes.Status204NoContent;
        OnAccepted(path);
    }

    private async Task AnswerAsync(HttpContext context, RecordedRequest request, CannedReply? canned)
    {
        if (canned is null)
        {
            await (Refusal(request) is { } refused
                ? WriteAsync(context, 401, refused)
                : AnswerAsUsualAsync(context, request));
            return;
        }

        if (canned.CarriedOut)
        {
            _api.Answer(request);
        }

        await AnswerCannedAsync(context, canned);
    }

    private static async Task AnswerCannedAsync(HttpContext context, CannedReply canned)
    {
        if (canned.Silent)
        {
            await Task.Delay(Timeout.Infinite, context.RequestAborted).ContinueWith(
                static _ => { }, TaskScheduler.Default);
        }

        if (canned.Cut || canned.Silent)
        {
            context.Abort();
            return;
        }

        await Task.Delay(canned.Delay);
        foreach (var (name, value) in canned.Headers)
        {
            context.Response.Headers[name] = value;
        }

        context.Response.StatusCode = canned.Status;
        if (canned.Body is not null)
        {
            context.Response.ContentType = canned.ContentType;
            await context.Response.WriteAsync(canned.Body);
        }
    }

    private async Task AnswerAsUsualAsync(HttpContext context, RecordedRequest request)
    {
        var (status, body) = _api.Answer(request);
        if (status == 204 && IsCallback(request.Path))
        {
            _accepted.Writer.TryWrite(request.Path);
            OnAccepted(request.Path);
        }

        if (Settings.Bucket is { } bucket)
        {
            var headers = context.Response.Headers;
            headers["X-RateLimit-Bucket"] = "abcd1234";
            headers["X-RateLimit-Limit"] = bucket.Limit.ToString(CultureInfo.InvariantCulture);
            headers["X-RateLimit-Remaining"] = (bucket.Limit - 1).ToString(CultureInfo.InvariantCulture);
            headers["X-RateLimit-Reset-After"] = bucket.WindowSeconds.ToString(CultureInfo.InvariantCulture);
        }

        await WriteAsync(context, status, body);
    }

    /// <summary>A call that carries neither an interaction's token nor the right bot token is refused.</summary>
    private JsonObject? Refusal(RecordedRequest request)
    {
        var byToken = request.Path.StartsWith("interactions/", StringComparison.Ordinal)
            || request.Path.StartsWith("webhooks/", StringComparison.Ordinal);
        return byToken || request.Headers.GetValueOrDefault("Authorization") == $"Bot {Settings.Token}"
            ? null
            : new JsonObject { ["message"] = "401: Unauthorized", ["code"] = 0 };
    }

    private static async Task WriteAsync(HttpContext context, int status, JsonNode? body)
    {
        context.Response.StatusCode = status;
        if (body is not null)
        {
            context.Response.ContentType = "application/json";
            await context.Response.WriteAsync(body.ToJsonString());
        }
    }
}
