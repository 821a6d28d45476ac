using CrewBot.Discord.Wire;

namespace CrewBot.Discord.Gateway;

/// <summary>Answers what people do and write.</summary>
internal interface IEventHandler
{
    Task HandleAsync(ReceivedInteraction received, CancellationToken cancellationToken);

    /// <summary>Answers a message that was written to the bot alone.</summary>
    Task HandleAsync(Message message, CancellationToken cancellationToken);

    /// <summary>Tells the asker, without looking further, that too much is going on.</summary>
    Task RefuseBusyAsync(ReceivedInteraction received, CancellationToken cancellationToken);
}
