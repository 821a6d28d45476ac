using CrewBot.Storage.Outbox;
using Microsoft.Extensions.Time.Testing;

namespace CrewBot.Storage.Tests.Outbox;

public sealed class OutboxPumpTests : DatabaseTest
{
    private readonly FakeTimeProvider _clock = new(new DateTimeOffset(2027, 1, 16, 14, 0, 0, TimeSpan.Zero));
    private readonly ScriptedSender _sender = new();

    private OutboxPump Pump => new(Database, _sender, _clock);

    [Fact]
    public async Task PumpAsync_MessagesDue_PostsThemInOrderOnce()
    {
        await AddAsync("first");
        await AddAsync("second");

        Assert.Equal(2, await Pump.PumpAsync(Cancellation));
        Assert.Equal(0, await Pump.PumpAsync(Cancellation));
        Assert.Equal(["first", "second"], _sender.Attempts.Select(attempt => attempt.Body));
    }

    [Fact]
    public async Task AddAsync_ChangeThatFails_LeavesNothingToPost()
    {
        await Assert.ThrowsAsync<InvalidOperationException>(() => WriteAsync(Alpha, async session =>
        {
            await new OutboxRepository(session).AddAsync("catch", "never", _clock.GetUtcNow());
            throw new InvalidOperationException();
        }));

        Assert.Equal(0, await Pump.PumpAsync(Cancellation));
    }

    [Fact]
    public async Task PumpAsync_AttemptFails_TriesAgainAfterThePauseWithTheSameNonce()
    {
        await AddAsync("first");
        await AddAsync("second");
        _sender.FailNext(new HttpRequestException("down"));

        Assert.Equal(0, await Pump.PumpAsync(Cancellation));
        _clock.Advance(TimeSpan.FromSeconds(1));
        Assert.Equal(2, await Pump.PumpAsync(Cancellation));

        Assert.Equal(2, _sender.Attempts.Where(attempt => attempt.Body == "first").Select(attempt => attempt.Nonce).Count());
        Assert.Single(_sender.Attempts.Where(attempt => attempt.Body == "first").Select(attempt => attempt.Nonce).Distinct());
    }

    [Fact]
    public async Task PumpAsync_PlatformWillNeverTakeIt_BecomesADeadLetterAndTheNextGoesOn()
    {
        await AddAsync("bad");
        await AddAsync("good");
        _sender.FailNext(new MessageRefusedException("no such channel"));

        await Pump.PumpAsync(Cancellation);
        await Pump.PumpAsync(Cancellation);

        var dead = Assert.Single(await ReadAsync(Alpha, session => new OutboxRepository(session).DeadAsync()));
        Assert.Equal(("catch", 1, "no such channel"), (dead.Purpose, dead.Attempts, dead.Fault));
        Assert.Equal("good", _sender.Attempts[^1].Body);
    }

    [Theory]
    [InlineData(1, 1)]
    [InlineData(2, 2)]
    [InlineData(4, 8)]
    [InlineData(9, 300)]
    [InlineData(30, 300)]
    public void PauseAfter_Attempts_DoublesUpToFiveMinutes(long attempts, double seconds) =>
        Assert.Equal(TimeSpan.FromSeconds(seconds), OutboxPump.PauseAfter(attempts));

    private Task AddAsync(string body) =>
        WriteAsync(Alpha, session => new OutboxRepository(session).AddAsync("catch", body, _clock.GetUtcNow()));
}
