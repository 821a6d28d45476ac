using CrewBot.Storage.Outbox;

namespace CrewBot.Storage.Tests.Outbox;

/// <summary>A platform that fails as often as it is told to.</summary>
internal sealed class ScriptedSender : IOutboxSender
{
    private readonly Queue<Exception> _faults = new();

    public List<(string Crew, string Body, string Nonce)> Attempts { get; } = [];

    public void FailNext(Exception fault) => _faults.Enqueue(fault);

    public Task SendAsync(string crew, OutboxMessage message, CancellationToken cancellationToken)
    {
        Attempts.Add((crew, message.Body, message.Nonce));
        return _faults.TryDequeue(out var fault) ? Task.FromException(fault) : Task.CompletedTask;
    }
}
