using CrewBot.Chat.Commands;
using CrewBot.Chat.Posts;
using CrewBot.Discord.Gateway;
using CrewBot.Discord.Rest;
using Microsoft.Extensions.Logging;

namespace CrewBot.Discord.Mapping;

/// <summary>The crew's chat on Discord: registers the commands, stays connected, answers.</summary>
public sealed class DiscordRoom : IDisposable
{
    // Nobody waits for the definitions; whoever writes while the process comes up waits for an answer.
    private static readonly TimeSpan RegisterAfter = TimeSpan.FromSeconds(1);
    private static readonly TimeSpan FinishWithin = TimeSpan.FromSeconds(10);

    private readonly TimeProvider _clock;
    private readonly ILogger<DiscordRoom> _log;
    private readonly RestClient _rest;
    private readonly HttpClient _files = ApiConnection.Create();
    private readonly EventIntake _intake;
    private readonly GatewayClient _gateway;
    private readonly Registration _registration;

    public DiscordRoom(
        DiscordOptions options, CommandCatalog catalog, Dispatcher dispatcher, CrewBook book, IPictureDrawer pictures, TimeProvider clock,
        ILoggerFactory logs)
    {
        _clock = clock;
        _log = logs.CreateLogger<DiscordRoom>();
        _rest = new RestClient(ApiConnection.Create(), options, clock, logs.CreateLogger<RestClient>());
        var api = new DiscordApi(_rest);
        var codec = new PressCodec(catalog, new LongButtons(new ButtonBook(book), clock, logs.CreateLogger<LongButtons>()));
        var cards = new CardWriter(new ButtonRows(codec));
        var files = new SentFiles(_files, options.ApiBaseAddress);
        var callers = new Callers(
            new HomeCrews(book, api, clock), new CrewNames(api, clock, logs.CreateLogger<CrewNames>()), options.Units, logs.CreateLogger<Callers>());
        var router = new EventRouter(
            new InteractionRouter(
                api, catalog, dispatcher, codec, cards, callers, files, pictures, clock, logs.CreateLogger<InteractionRouter>()),
            new DirectMessages(api, catalog, dispatcher, callers, cards, files, clock));
        Posts = new ChannelPosts(api, cards);
        _intake = new EventIntake(router, logs.CreateLogger<EventIntake>());
        _gateway = new GatewayClient(
            options, api, _intake, static () => new WebSocketTransport(), clock, Random.Shared, logs);
        _registration = new Registration(
            api, new CommandDefinitions(catalog, new French()), options, logs.CreateLogger<Registration>());
    }

    /// <summary>Says what nobody asked for.</summary>
    public IChatPost Posts { get; }

    /// <summary>Stays in the room until told to leave, then finishes what was acknowledged.</summary>
    /// <exception cref="DiscordFatalException">Nothing helps until a person changes something.</exception>
    public async Task RunAsync(CancellationToken stopping)
    {
        using var leaving = CancellationTokenSource.CreateLinkedTokenSource(stopping);
        var registering = RegisterAsync(leaving.Token);
        try
        {
            await _gateway.RunAsync(stopping);
        }
        finally
        {
            var abandoned = await _intake.DrainAsync(FinishWithin, _clock);
            if (abandoned > 0)
            {
                _log.LogWarning("{Count} answers took too long and were given up", abandoned);
            }

            await leaving.CancelAsync();
            await registering;
        }
    }

    public void Dispose()
    {
        _intake.Dispose();
        _rest.Dispose();
        _files.Dispose();
    }

    private async Task RegisterAsync(CancellationToken stopping)
    {
        try
        {
            await Task.Delay(RegisterAfter, _clock, stopping);
            await _registration.RunAsync(stopping);
        }
        catch (OperationCanceledException) when (stopping.IsCancellationRequested)
        {
        }
    }
}
