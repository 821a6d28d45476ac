namespace CrewBot.Storage.Connections;

/// <summary>Wakes the one who waits for something to do. Whoever waits looks at what there is to do before waiting again.</summary>
public sealed class Bell
{
    private TaskCompletionSource _rung = Unrung();

    /// <summary>Wakes the one who waits; while nobody does, the next wait is over at once.</summary>
    public void Ring() => Volatile.Read(ref _rung).TrySetResult();

    /// <summary>Waits until it rings, or for some time at most.</summary>
    public async Task WaitAsync(TimeSpan atMost, TimeProvider clock, CancellationToken cancellationToken)
    {
        using var over = CancellationTokenSource.CreateLinkedTokenSource(cancellationToken);
        await Task.WhenAny(_rung.Task, Task.Delay(atMost, clock, over.Token));
        await over.CancelAsync();
        cancellationToken.ThrowIfCancellationRequested();
        if (_rung.Task.IsCompleted)
        {
            Volatile.Write(ref _rung, Unrung());
        }
    }

    private static TaskCompletionSource Unrung() => new(TaskCreationOptions.RunContinuationsAsynchronously);
}
