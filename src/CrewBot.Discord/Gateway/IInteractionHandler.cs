namespace CrewBot.Discord.Gateway;

/// <summary>Answers interactions.</summary>
internal interface IInteractionHandler
{
    Task HandleAsync(ReceivedInteraction received, CancellationToken cancellationToken);

    /// <summary>Tells the asker, without looking further, that too much is going on.</summary>
    Task RefuseBusyAsync(ReceivedInteraction received, CancellationToken cancellationToken);
}
