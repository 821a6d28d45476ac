namespace CrewBot.Storage.Outbox;

/// <summary>Posts messages on a platform.</summary>
public interface IOutboxSender
{
    /// <summary>Posts a message to a crew; the nonce lets the platform drop a second copy.</summary>
    /// <exception cref="MessageRefusedException">The platform will never take it.</exception>
    Task SendAsync(string crew, OutboxMessage message, CancellationToken cancellationToken);
}
