using CrewBot.Discord.Gateway;
using CrewBot.Discord.Rest;
using CrewBot.Discord.Wire;

namespace CrewBot.Discord.Echo;

/// <summary>Answers everyone with one fixed card.</summary>
internal sealed class SameCard(DiscordApi api) : IEventHandler
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

    public Task HandleAsync(Message message, CancellationToken cancellationToken) => Task.CompletedTask;

    public Task RefuseBusyAsync(ReceivedInteraction received, CancellationToken cancellationToken) => Task.CompletedTask;
}
