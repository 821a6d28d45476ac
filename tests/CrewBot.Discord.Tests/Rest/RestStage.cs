using CrewBot.Discord.Rest;
using CrewBot.Discord.StandIn;
using CrewBot.Discord.Tests.Fakes;
using CrewBot.Discord.Wire;
using Microsoft.Extensions.Logging;

namespace CrewBot.Discord.Tests.Rest;

/// <summary>The client against the stand-in, with everything that is logged kept.</summary>
internal sealed class RestStage : IAsyncDisposable
{
    private readonly RestClient _client;

    private RestStage(StandInServer server, TimeProvider clock)
    {
        Server = server;
        var options = new DiscordOptions
        {
            Token = new BotToken(server.Settings.Token),
            ApiBaseAddress = server.ApiAddress,
        };
        _client = new RestClient(ApiConnection.Create(), options, clock, new Logger<RestClient>(Logs));
        Api = new DiscordApi(_client);
    }

    public StandInServer Server { get; }
    public LogBook Logs { get; } = new();
    public DiscordApi Api { get; }

    /// <summary>Part of the path of messages in a channel.</summary>
    public const string Messages = "channels/";

    /// <summary>Part of the path of first answers.</summary>
    public const string Callback = "/callback";

    /// <summary>How long the platform waits for a first answer.</summary>
    public static readonly TimeSpan ThreeSeconds = TimeSpan.FromSeconds(3);

    public static readonly Snowflake Channel = new(StandInData.ChannelId);
    public static readonly Snowflake Application = new(1012345678901234560);

    public static async Task<RestStage> OpenAsync(TimeProvider? clock = null) =>
        new(await StandInServer.StartAsync(), clock ?? TimeProvider.System);

    public static MessageBody Text(string content) => new() { Content = content, AllowedMentions = AllowedMentions.Nobody };

    public Task<Message> PostAsync(string nonce, CancellationToken cancellationToken) =>
        Api.CreateMessageAsync(Channel, Text("Thin ice off the point."), nonce, [], cancellationToken);

    public Task AnswerAsync(string token, TimeSpan within, CancellationToken cancellationToken) =>
        Api.AnswerAsync(
            new Snowflake(1400000000000000001),
            token,
            new MessageResponse(ResponseType.Message, Text("Tie a palomar.")),
            WireJson.Default.MessageResponse,
            [],
            within,
            cancellationToken);

    public int Count(string pathPart) =>
        Server.Requests.Count(request => request.Path.Contains(pathPart, StringComparison.Ordinal));

    public async ValueTask DisposeAsync()
    {
        _client.Dispose();
        Logs.Dispose();
        await Server.DisposeAsync();
    }
}
