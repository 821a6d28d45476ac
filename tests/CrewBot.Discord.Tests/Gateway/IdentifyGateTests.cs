using CrewBot.Discord.Gateway;
using CrewBot.Discord.Tests.Fakes;

namespace CrewBot.Discord.Tests.Gateway;

public sealed class IdentifyGateTests
{
    private readonly WatchedClock _clock = new();

    private static CancellationToken Limit => TestContext.Current.CancellationToken;

    [Fact(Timeout = 10_000)]
    public async Task EnterAsync_SameKey_WaitsForTheOutcomeAndFiveSecondsMore()
    {
        var gate = new IdentifyGate(_clock);
        var first = await gate.EnterAsync(new ShardId(0, 2), maxConcurrency: 1, Limit);
        var second = gate.EnterAsync(new ShardId(1, 2), maxConcurrency: 1, Limit);
        _clock.Advance(TimeSpan.FromMinutes(1));
        Assert.False(second.IsCompleted);

        first.Dispose();
        await _clock.PassAsync(TimeSpan.FromSeconds(5), Limit);
        (await second).Dispose();
    }

    [Fact(Timeout = 10_000)]
    public async Task EnterAsync_OtherKey_PassesAtOnce()
    {
        var gate = new IdentifyGate(_clock);
        using var first = await gate.EnterAsync(new ShardId(0, 16), maxConcurrency: 16, Limit);
        using var second = await gate.EnterAsync(new ShardId(1, 16), maxConcurrency: 16, Limit);
        var third = gate.EnterAsync(new ShardId(16, 32), maxConcurrency: 16, Limit);
        Assert.False(third.IsCompleted);
    }

    [Fact(Timeout = 10_000)]
    public async Task EnterAsync_GivenUpWhileWaiting_LeavesTheTurnToOthers()
    {
        var gate = new IdentifyGate(_clock);
        (await gate.EnterAsync(new ShardId(0, 1), maxConcurrency: 1, Limit)).Dispose();
        using var impatient = new CancellationTokenSource();
        var given = gate.EnterAsync(new ShardId(0, 1), maxConcurrency: 1, impatient.Token);
        await _clock.TimerAsync(due => due == TimeSpan.FromSeconds(5), Limit);
        await impatient.CancelAsync();
        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => given);

        _clock.Advance(TimeSpan.FromSeconds(5));
        using var next = await gate.EnterAsync(new ShardId(0, 1), maxConcurrency: 1, Limit);
    }
}
