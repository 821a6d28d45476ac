using System.Text.Json.Nodes;
using CrewBot.Discord.Mapping;
using CrewBot.Discord.StandIn;
using CrewBot.Discord.Tests.Contracts;
using CrewBot.Discord.Tests.Fakes;

namespace CrewBot.Discord.Tests.Mapping;

/// <summary>The whole room against the stand-in.</summary>
internal sealed class RoomStage : IAsyncDisposable
{
    private readonly CancellationTokenSource _stopping = new();
    private readonly DiscordRoom _room;
    private readonly bool _isOnRealTime;
    private GatewaySocket _socket = null!;

    private RoomStage(StandInServer server, TimeProvider clock, string? testGuild, string? database)
    {
        Server = server;
        _isOnRealTime = clock == TimeProvider.System;
        Commands = TestCommands.Create(Logs, database);
        var options = new DiscordOptions
        {
            Token = new BotToken(server.Settings.Token),
            ApiBaseAddress = server.ApiAddress,
            TestGuildId = testGuild,
        };
        _room = new DiscordRoom(options, Commands.Catalog, Commands.Dispatcher, Commands.Book, Commands.Drawer, clock, Logs);
        Run = _room.RunAsync(_stopping.Token);
    }

    public StandInServer Server { get; }
    public LogBook Logs { get; } = new();
    public TestCommands Commands { get; }
    public CrewBot.Chat.Posts.IChatPost Posts => _room.Posts;
    public Task Run { get; }
    public InteractionMaker Make => Server.Interactions;

    public static async Task<RoomStage> OpenAsync(
        CancellationToken cancellationToken,
        TimeProvider? clock = null,
        string? testGuild = null,
        StandInSettings? settings = null,
        Action<StandInServer>? prepare = null,
        string? database = null)
    {
        var server = await StandInServer.StartAsync(settings);
        prepare?.Invoke(server);
        var stage = new RoomStage(server, clock ?? TimeProvider.System, testGuild, database);
        stage._socket = await server.NextActiveAsync(cancellationToken);
        return stage;
    }

    /// <summary>Waits for the next connection and talks over that one.</summary>
    public async Task AgainAsync(CancellationToken cancellationToken) => _socket = await Server.NextActiveAsync(cancellationToken);

    public Task SendAsync(JsonObject interaction) =>
        StandInServer.DispatchAsync(_socket, "INTERACTION_CREATE", interaction);

    /// <summary>Writes a direct message to the bot and waits for what it says to it.</summary>
    public async Task<RecordedRequest> WriteAsync(JsonObject message, CancellationToken cancellationToken)
    {
        await StandInServer.DispatchAsync(_socket, "MESSAGE_CREATE", message);
        return await Server.NextRequestAsync($"channels/{message["channel_id"]}/messages", cancellationToken);
    }

    /// <summary>Writes one message after another and waits for what is said to the last.</summary>
    public async Task<RecordedRequest> WriteAsync(JsonObject first, JsonObject last, CancellationToken cancellationToken)
    {
        await StandInServer.DispatchAsync(_socket, "MESSAGE_CREATE", first);
        return await WriteAsync(last, cancellationToken);
    }

    /// <summary>
    /// Sends an interaction and waits for its first answer; on real time, where a busy machine may put it off, for what it
    /// is answered in the end.
    /// </summary>
    public async Task<JsonNode> AskAsync(JsonObject interaction, CancellationToken cancellationToken)
    {
        await SendAsync(interaction);
        return _isOnRealTime
            ? await Server.NextAnswerAsync(interaction, cancellationToken)
            : (await Server.NextRequestAsync($"interactions/{interaction["id"]}/", cancellationToken)).Json!;
    }

    /// <summary>The command that logs a fish of 20 in.</summary>
    public JsonObject Log(string species) =>
        Make.Command("catch", InteractionMaker.Subcommand("log", InteractionMaker.Option("species", 3, species), InteractionMaker.Option("length", 3, "20in")));

    /// <summary>Opens and closes another room on the same server, as a restart does.</summary>
    public async Task RegisterAgainAsync(CancellationToken cancellationToken)
    {
        var options = new DiscordOptions
        {
            Token = new BotToken(Server.Settings.Token),
            ApiBaseAddress = Server.ApiAddress,
        };
        using var second = new DiscordRoom(options, Commands.Catalog, Commands.Dispatcher, Commands.Book, Commands.Drawer, TimeProvider.System, Logs);
        using var stop = CancellationTokenSource.CreateLinkedTokenSource(cancellationToken);
        var running = second.RunAsync(stop.Token);
        await Server.NextActiveAsync(cancellationToken);
        await Server.NextRequestAsync("with_localizations", cancellationToken);
        await Logs.LineAsync("are registered as they should be", cancellationToken);
        await stop.CancelAsync();
        await running;
    }

    public Task StopAsync() => _stopping.CancelAsync();

    /// <summary>Checks every body sent so far, where the published description is at hand.</summary>
    public void CheckBodies()
    {
        if (ApiDescription.IfThere() is { } description)
        {
            Assert.All(Server.Requests, description.Check);
        }
    }

    public async ValueTask DisposeAsync()
    {
        await _stopping.CancelAsync();
        await Run.ContinueWith(static _ => { }, TaskScheduler.Default);
        _room.Dispose();
        await Commands.Book.DisposeAsync();
        _stopping.Dispose();
        Logs.Dispose();
        await Server.DisposeAsync();
    }
}
