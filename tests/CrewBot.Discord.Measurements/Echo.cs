using CrewBot.Discord.Gateway;
using CrewBot.Discord.Rest;
using CrewBot.Discord.Wire;
using Microsoft.Extensions.Logging.Abstractions;

namespace CrewBot.Discord.Measurements;

/// <summary>The client alone: no commands, no computing, the same small card for everyone.</summary>
internal static class Echo
{
    public static async Task<int> RunAsync()
    {
        var options = new DiscordOptions
        {
            Token = new BotToken(Environment.GetEnvironmentVariable(Bot.TokenVariable)!),
            ApiBaseAddress = new Uri(Environment.GetEnvironmentVariable(Bot.AddressVariable)!),
        };
        var logs = NullLoggerFactory.Instance;
        using var rest = new RestClient(
            ApiConnection.Create(), options, TimeProvider.System, NullLogger<RestClient>.Instance);
        var api = new DiscordApi(rest);
        using var intake = new InteractionIntake(new Handler(api), NullLogger<InteractionIntake>.Instance);
        var gateway = new GatewayClient(
            options, api, intake, static () => new WebSocketTransport(), TimeProvider.System, Random.Shared, logs);
        await gateway.RunAsync(CancellationToken.None);
        return 0;
    }

    private sealed class Handler(DiscordApi api) : IInteractionHandler
    {
        private static readonly MessageResponse Card = new(ResponseType.Message, new MessageBody
        {
            AllowedMentions = AllowedMentions.Nobody,
            Embeds = [new Embed { Title = "Walleye rig", Description = "A palomar, and a long breath." }],
        });

        public Task HandleAsync(ReceivedInteraction received, CancellationToken cancellationToken) =>
            api.AnswerAsync(
                received.Interaction.Id, received.Interaction.Token, Card, WireJson.Default.MessageResponse, [],
                TimeSpan.FromSeconds(3), cancellationToken);

        public Task RefuseBusyAsync(ReceivedInteraction received, CancellationToken cancellationToken) =>
            Task.CompletedTask;
    }
}
