using System.Collections.Concurrent;
using System.Threading.Channels;
using CrewBot.Discord.Gateway;
using CrewBot.Discord.Wire;
using Channel = System.Threading.Channels.Channel;

namespace CrewBot.Discord.Tests.Fakes;

/// <summary>Notes what it is given, then does what the test says.</summary>
internal sealed class RecordingHandler : IEventHandler
{
    private readonly Channel<ReceivedInteraction> _handled = Channel.CreateUnbounded<ReceivedInteraction>();
    private readonly Channel<ReceivedInteraction> _refused = Channel.CreateUnbounded<ReceivedInteraction>();

    private readonly Channel<Message> _written = Channel.CreateUnbounded<Message>();

    public Func<ReceivedInteraction, CancellationToken, Task> Work { get; set; } = static (_, _) => Task.CompletedTask;
    public Func<ReceivedInteraction, CancellationToken, Task> Refusal { get; set; } = static (_, _) => Task.CompletedTask;
    public ConcurrentQueue<string> Ids { get; } = new();

    public async Task HandleAsync(ReceivedInteraction received, CancellationToken cancellationToken)
    {
        Ids.Enqueue(received.Interaction.Id.ToString());
        _handled.Writer.TryWrite(received);
        await Work(received, cancellationToken);
    }

    public Task HandleAsync(Message message, CancellationToken cancellationToken)
    {
        _written.Writer.TryWrite(message);
        return Task.CompletedTask;
    }

    public async Task RefuseBusyAsync(ReceivedInteraction received, CancellationToken cancellationToken)
    {
        _refused.Writer.TryWrite(received);
        await Refusal(received, cancellationToken);
    }

    public ValueTask<ReceivedInteraction> NextHandledAsync(CancellationToken cancellationToken) =>
        _handled.Reader.ReadAsync(cancellationToken);

    public ValueTask<Message> NextWrittenAsync(CancellationToken cancellationToken) =>
        _written.Reader.ReadAsync(cancellationToken);

    public ValueTask<ReceivedInteraction> NextRefusedAsync(CancellationToken cancellationToken) =>
        _refused.Reader.ReadAsync(cancellationToken);
}
