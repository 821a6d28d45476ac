using CrewBot.Discord.Gateway;
using CrewBot.Discord.Wire;

namespace CrewBot.Discord.Mapping;

/// <summary>Takes what people do and what they write each to its own desk.</summary>
internal sealed class EventRouter(InteractionRouter interactions, DirectMessages messages) : IEventHandler
{
    public Task HandleAsync(ReceivedInteraction received, CancellationToken cancellationToken) =>
        interactions.HandleAsync(received, cancellationToken);

    public Task HandleAsync(Message message, CancellationToken cancellationToken) => messages.HandleAsync(message, cancellationToken);

    public Task RefuseBusyAsync(ReceivedInteraction received, CancellationToken cancellationToken) =>
        interactions.RefuseBusyAsync(received, cancellationToken);
}
