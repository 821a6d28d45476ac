using System.Net;
using CrewBot.Discord.Gateway;
using CrewBot.Discord.Rest;
using CrewBot.Discord.Tests.Fakes;
using CrewBot.Discord.Wire;
using Microsoft.Extensions.Logging;

namespace CrewBot.Discord.Tests.Gateway;

public sealed class EventIntakeTests : IDisposable
{
    private readonly LogBook _logs = new();
    private readonly RecordingHandler _handler = new();
    private readonly EventIntake _intake;

    public EventIntakeTests() => _intake = new EventIntake(_handler, _logs.CreateLogger<EventIntake>());

    private static CancellationToken Limit => TestContext.Current.CancellationToken;

    public void Dispose()
    {
        _intake.Dispose();
        _logs.Dispose();
    }

    [Fact(Timeout = 10_000)]
    public async Task Offer_AllPlacesTaken_RefusesThenDropsWithoutEverWaiting()
    {
        _handler.Work = static (_, token) => Task.Delay(Timeout.Infinite, token);
        _handler.Refusal = static (_, token) => Task.Delay(Timeout.Infinite, token);
        for (var number = 0; number < EventIntake.MostOpen + EventIntake.MostRefusals + 5; number++)
        {
            _intake.Offer(Interaction(number));
        }

        for (var number = 0; number < EventIntake.MostRefusals; number++)
        {
            await _handler.NextRefusedAsync(Limit);
        }

        Assert.Equal(EventIntake.MostOpen, _intake.Open);
        Assert.Equal(5, _intake.Dropped);
        await _intake.DrainAsync(TimeSpan.Zero, TimeProvider.System);
    }

    [Fact(Timeout = 10_000)]
    public async Task Offer_HandlerThrows_LogsAndGoesOn()
    {
        _handler.Work = static (_, _) => throw new InvalidOperationException("the hole froze over");
        _intake.Offer(Interaction(1));
        await _handler.NextHandledAsync(Limit);
        await _intake.DrainAsync(TimeSpan.FromSeconds(5), TimeProvider.System);

        Assert.Contains(_logs.Lines, line => line.Contains("the hole froze over", StringComparison.Ordinal));
        _handler.Work = static (_, _) => Task.CompletedTask;
        _intake.Offer(Interaction(2));
        await _handler.NextHandledAsync(Limit);
    }

    [Fact(Timeout = 10_000)]
    public async Task Offer_PlatformTakesNoAnswer_IsAWarningAndNoFault()
    {
        _handler.Work = static (_, _) => throw new DiscordApiException(Routes.GatewayAdvice, HttpStatusCode.NotFound, 10062, "Unknown interaction");
        _intake.Offer(Interaction(1));
        await _logs.LineAsync("Unknown interaction", Limit);

        Assert.StartsWith("Warning", Assert.Single(_logs.Lines), StringComparison.Ordinal);
    }

    [Fact(Timeout = 10_000)]
    public async Task DrainAsync_WorkIsGivenUp_IsNoFault()
    {
        _handler.Work = static (_, token) => Task.Delay(Timeout.Infinite, token);
        _intake.Offer(Interaction(1));
        await _handler.NextHandledAsync(Limit);

        Assert.Equal(1, await _intake.DrainAsync(TimeSpan.Zero, TimeProvider.System));
        Assert.Equal(0, await _intake.DrainAsync(TimeSpan.FromSeconds(5), TimeProvider.System));
        Assert.Empty(_logs.Lines);
    }

    [Fact(Timeout = 10_000)]
    public async Task DrainAsync_WorkFinishesInTime_AbandonsNothing()
    {
        var finish = new TaskCompletionSource();
        _handler.Work = (_, _) => finish.Task;
        _intake.Offer(Interaction(1));
        await _handler.NextHandledAsync(Limit);

        var drain = _intake.DrainAsync(TimeSpan.FromSeconds(10), TimeProvider.System);
        Assert.False(drain.IsCompleted);
        finish.SetResult();
        Assert.Equal(0, await drain);
    }

    [Fact(Timeout = 10_000)]
    public async Task DrainAsync_WorkTakesTooLong_IsCancelledAndCounted()
    {
        var clock = new WatchedClock();
        var cancelled = new TaskCompletionSource();
        _handler.Work = async (_, token) =>
        {
            await using var registration = token.Register(cancelled.SetResult);
            await Task.Delay(Timeout.Infinite, token);
        };
        _intake.Offer(Interaction(1));
        await _handler.NextHandledAsync(Limit);

        var drain = _intake.DrainAsync(TimeSpan.FromSeconds(10), clock);
        await clock.PassAsync(TimeSpan.FromSeconds(10), Limit);
        Assert.Equal(1, await drain);
        await cancelled.Task;
    }

    private static ReceivedInteraction Interaction(int id) => new(
        new Interaction { Id = new Snowflake((ulong)id), Type = InteractionType.Command, Token = "t" }, null, 0);
}
