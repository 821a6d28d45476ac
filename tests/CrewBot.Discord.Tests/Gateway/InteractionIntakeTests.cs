using CrewBot.Discord.Gateway;
using CrewBot.Discord.Tests.Fakes;
using CrewBot.Discord.Wire;
using Microsoft.Extensions.Logging;

namespace CrewBot.Discord.Tests.Gateway;

public sealed class InteractionIntakeTests : IDisposable
{
    private readonly LogBook logs = new();
    private readonly RecordingHandler handler = new();
    private readonly InteractionIntake intake;

    public InteractionIntakeTests() => intake = new InteractionIntake(handler, logs.CreateLogger<InteractionIntake>());

    private static CancellationToken Limit => TestContext.Current.CancellationToken;

    public void Dispose()
    {
        intake.Dispose();
        logs.Dispose();
    }

    [Fact(Timeout = 10_000)]
    public async Task Offer_AllPlacesTaken_RefusesThenDropsWithoutEverWaiting()
    {
        handler.Work = static (_, token) => Task.Delay(Timeout.Infinite, token);
        handler.Refusal = static (_, token) => Task.Delay(Timeout.Infinite, token);
        for (var number = 0; number < InteractionIntake.MostOpen + InteractionIntake.MostRefusals + 5; number++)
        {
            intake.Offer(Interaction(number));
        }

        for (var number = 0; number < InteractionIntake.MostRefusals; number++)
        {
            await handler.NextRefusedAsync(Limit);
        }

        Assert.Equal(InteractionIntake.MostOpen, intake.Open);
        Assert.Equal(5, intake.Dropped);
        await intake.DrainAsync(TimeSpan.Zero, TimeProvider.System);
    }

    [Fact(Timeout = 10_000)]
    public async Task Offer_HandlerThrows_LogsAndGoesOn()
    {
        handler.Work = static (_, _) => throw new InvalidOperationException("the hole froze over");
        intake.Offer(Interaction(1));
        await handler.NextHandledAsync(Limit);
        await intake.DrainAsync(TimeSpan.FromSeconds(5), TimeProvider.System);

        Assert.Contains(logs.Lines, line => line.Contains("the hole froze over", StringComparison.Ordinal));
        handler.Work = static (_, _) => Task.CompletedTask;
        intake.Offer(Interaction(2));
        await handler.NextHandledAsync(Limit);
    }

    [Fact(Timeout = 10_000)]
    public async Task DrainAsync_WorkFinishesInTime_AbandonsNothing()
    {
        var finish = new TaskCompletionSource();
        handler.Work = (_, _) => finish.Task;
        intake.Offer(Interaction(1));
        await handler.NextHandledAsync(Limit);

        var drain = intake.DrainAsync(TimeSpan.FromSeconds(10), TimeProvider.System);
        Assert.False(drain.IsCompleted);
        finish.SetResult();
        Assert.Equal(0, await drain);
    }

    [Fact(Timeout = 10_000)]
    public async Task DrainAsync_WorkTakesTooLong_IsCancelledAndCounted()
    {
        var clock = new WatchedClock();
        var cancelled = new TaskCompletionSource();
        handler.Work = async (_, token) =>
        {
            await using var registration = token.Register(cancelled.SetResult);
            await Task.Delay(Timeout.Infinite, token);
        };
        intake.Offer(Interaction(1));
        await handler.NextHandledAsync(Limit);

        var drain = intake.DrainAsync(TimeSpan.FromSeconds(10), clock);
        await clock.PassAsync(TimeSpan.FromSeconds(10), Limit);
        Assert.Equal(1, await drain);
        await cancelled.Task;
    }

    private static ReceivedInteraction Interaction(int id) => new(
        new Interaction { Id = new Snowflake((ulong)id), Type = InteractionType.Command, Token = "t" }, null, 0);
}
