using CrewBot.Chat.Commands;
using CrewBot.Chat.Posts;
using CrewBot.Discord.Gateway;
using CrewBot.Discord.Mapping;
using CrewBot.Discord.Rest;
using Microsoft.Extensions.Logging;

namespace CrewBot.Discord;

/// <summary>The crew's chat on Discord: registers the commands, stays connected, answers.</summary>
public sealed class DiscordRoom : IDisposable
{
    private static readonly TimeSpan FinishWithin = TimeSpan.FromSeconds(10);

    private readonly TimeProvider clock;
    private readonly ILogger<DiscordRoom> log;
    private readonly RestClient rest;
    private readonly InteractionIntake intake;
    private readonly GatewayClient gateway;
    private readonly Registration registration;

    public DiscordRoom(
        DiscordOptions options, CommandCatalog catalog, Dispatcher dispatcher, TimeProvider clock, ILoggerFactory logs)
    {
        this.clock = clock;
        log = logs.CreateLogger<DiscordRoom>();
        rest = new RestClient(ApiConnection.Create(), options, clock, logs.CreateLogger<RestClient>());
        var api = new DiscordApi(rest);
        var codec = new PressCodec(catalog, new PressMemory());
        var cards = new CardWriter(new ButtonRows(codec, catalog));
        var router = new InteractionRouter(
            api, catalog, dispatcher, codec, cards, clock, logs.CreateLogger<InteractionRouter>());
        Posts = new ChannelPosts(api, cards);
        intake = new InteractionIntake(router, logs.CreateLogger<InteractionIntake>());
        gateway = new GatewayClient(
            options, api, intake, static () => new WebSocketTransport(), clock, Random.Shared, logs);
        registration = new Registration(
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
            await gateway.RunAsync(stopping);
        }
        finally
        {
            var abandoned = await intake.DrainAsync(FinishWithin, clock);
            if (abandoned > 0)
            {
                log.LogWarning("{Count} answers took too long and were given up", abandoned);
            }

            await leaving.CancelAsync();
            await registering;
        }
    }

    public void Dispose()
    {
        intake.Dispose();
        rest.Dispose();
    }

    private async Task RegisterAsync(CancellationToken stopping)
    {
        try
        {
            await registration.RunAsync(stopping);
        }
        catch (OperationCanceledException) when (stopping.IsCancellationRequested)
        {
        }
    }
}
