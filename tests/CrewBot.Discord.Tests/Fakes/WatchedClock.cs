using Microsoft.Extensions.Time.Testing;

namespace CrewBot.Discord.Tests.Fakes;

/// <summary>A clock that a test moves by hand, after it has seen that the code under test waits for it.</summary>
internal sealed class WatchedClock : FakeTimeProvider
{
    private readonly Lock _gate = new();
    private readonly List<(Func<TimeSpan, bool> Matches, TaskCompletionSource Seen)> _watchers = [];
    private readonly List<TimeSpan> _unseen = [];

    public override ITimer CreateTimer(TimerCallback callback, object? state, TimeSpan dueTime, TimeSpan period)
    {
        var timer = base.CreateTimer(callback, state, dueTime, period);
        Announce(dueTime);
        return timer;
    }

    /// <summary>Completes once a timer with a fitting due time has been made since the last call that it fitted.</summary>
    public Task TimerAsync(Func<TimeSpan, bool> matches, CancellationToken cancellationToken)
    {
        lock (_gate)
        {
            var index = _unseen.FindIndex(due => matches(due));
            if (index >= 0)
            {
                _unseen.RemoveAt(index);
                return Task.CompletedTask;
            }

            var seen = new TaskCompletionSource(TaskCreationOptions.RunContinuationsAsynchronously);
            _watchers.Add((matches, seen));
            return seen.Task.WaitAsync(cancellationToken);
        }
    }

    /// <summary>Waits until the code under test waits for that long, then lets the time pass.</summary>
    public async Task PassAsync(TimeSpan time, CancellationToken cancellationToken)
    {
        await TimerAsync(due => due == time, cancellationToken);
        Advance(time);
    }

    private void Announce(TimeSpan due)
    {
        lock (_gate)
        {
            var index = _watchers.FindIndex(watcher => watcher.Matches(due));
            if (index < 0)
            {
                _unseen.Add(due);
                return;
            }

            _watchers[index].Seen.TrySetResult();
            _watchers.RemoveAt(index);
        }
    }
}
