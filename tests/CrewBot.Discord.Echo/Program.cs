using CrewBot.Discord;
using CrewBot.Discord.Echo;
using CrewBot.Discord.Gateway;
using CrewBot.Discord.Rest;
using Microsoft.Extensions.Logging.Abstractions;

// The client alone: no commands, no computing, the same small card for everyone.
var options = new DiscordOptions
{
    Token = new BotToken(Environment.GetEnvironmentVariable("CREWBOT_DISCORD__TOKEN")!),
    ApiBaseAddress = new Uri(Environment.GetEnvironmentVariable("CREWBOT_DISCORD__APIBASEADDRESS")!),
};
using var rest = new RestClient(ApiConnection.Create(), options, TimeProvider.System, NullLogger<RestClient>.Instance);
var api = new DiscordApi(rest);
using var intake = new EventIntake(new SameCard(api), NullLogger<EventIntake>.Instance);
var gateway = new GatewayClient(
    options,
    api,
    intake,
    new SessionFile(null, options.Token, TimeProvider.System, NullLogger<SessionFile>.Instance),
    static () => new WebSocketTransport(),
    TimeProvider.System,
    Random.Shared,
    NullLoggerFactory.Instance);
await gateway.RunAsync(CancellationToken.None);
