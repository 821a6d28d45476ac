using CrewBot.Discord.Gateway;
using CrewBot.Discord.Rest;
using CrewBot.Discord.StandIn;
using CrewBot.Discord.Tests.Fakes;
using Microsoft.Extensions.Logging;

namespace CrewBot.Discord.Tests.Gateway;

/// <summary>The gateway client with real sockets against the stand-in, on a clock that runs twenty times as fast.</summary>
internal sealed class GatewayStage : IAsyncDisposable
{
    private readonly CancellationTokenSource _stopping = new();
    private readonly RestClient _rest;
    private readonly EventIntake _intake;
    private readonly bool _ownsServer;

    private GatewayStage(StandInServer server, bool ownsServer, Func<DiscordOptions, DiscordOptions> configure)
    {
        Server = server;
        _ownsServer = ownsServer;
        var clock = new HurriedClock(factor: 20);
        var options = configure(new DiscordOptions
        {
            Token = new BotToken(server.Settings.Token),
            ApiBaseAddress = server.ApiAddress,
        });
        _rest = new RestClient(ApiConnection.Create(), options, clock, new Logger<RestClient>(Logs));
        _intake = new EventIntake(Handler, new Logger<EventIntake>(Logs));
        var client = new GatewayClient(
            options, new DiscordApi(_rest), _intake, new SessionFile(options.SessionFile, options.Token, clock, new Logger<SessionFile>(Logs)), static () => new WebSocketTransport(), clock, Random.Shared, Logs);
        Run = client.RunAsync(_stopping.Token);
    }

    public StandInServer Server { get; }
    public LogBook Logs { get; } = new();
    public RecordingHandler Handler { get; } = new();
    public Task Run { get; }

    public static async Task<GatewayStage> OpenAsync(
        StandInSettings? settings = null,
        Action<StandInServer>? prepare = null,
        Func<DiscordOptions, DiscordOptions>? configure = null)
    {
        var server = await StandInServer.StartAsync(settings);
        prepare?.Invoke(server);
        return new GatewayStage(server, ownsServer: true, configure ?? (static options => options));
    }

    /// <summary>Opens another client on a server that outlives it, as a restart does.</summary>
    public static GatewayStage OpenOn(StandInServer server, Func<DiscordOptions, DiscordOptions> configure) => new(server, ownsServer: false, configure);

    public async Task StopAsync()
    {
        await _stopping.CancelAsync();
        await Run;
    }

    public async ValueTask DisposeAsync()
    {
        await _stopping.CancelAsync();
        await Run.ContinueWith(static _ => { }, TaskScheduler.Default);
        _intake.Dispose();
        _rest.Dispose();
        _stopping.Dispose();
        Logs.Dispose();
        if (_ownsServer)
        {
            await Server.DisposeAsync();
        }
    }
}
