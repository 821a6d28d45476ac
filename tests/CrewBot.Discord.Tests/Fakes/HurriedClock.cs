namespace CrewBot.Discord.Tests.Fakes;

/// <summary>Real time, only faster: waits of seconds become fractions of one.</summary>
internal sealed class HurriedClock(double factor) : TimeProvider
{
    private readonly long _start = System.GetTimestamp();

    public override long TimestampFrequency => System.TimestampFrequency;

    public override long GetTimestamp() => _start + (long)((System.GetTimestamp() - _start) * factor);

    public override ITimer CreateTimer(TimerCallback callback, object? state, TimeSpan dueTime, TimeSpan period) =>
        new HurriedTimer(System.CreateTimer(callback, state, Shorten(dueTime), Shorten(period)), this);

    private TimeSpan Shorten(TimeSpan time) => time > TimeSpan.Zero ? time / factor : time;

    private sealed class HurriedTimer(ITimer timer, HurriedClock clock) : ITimer
    {
        public bool Change(TimeSpan dueTime, TimeSpan period) =>
            timer.Change(clock.Shorten(dueTime), clock.Shorten(period));

        public void Dispose() => timer.Dispose();

        public ValueTask DisposeAsync() => timer.DisposeAsync();
    }
}
