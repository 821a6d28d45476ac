using CrewBot.Discord.Gateway;
using CrewBot.Discord.Mapping;
using CrewBot.Discord.StandIn;
using CrewBot.Discord.Tests.Rest;
using CrewBot.Discord.Wire;
using Microsoft.Extensions.Logging.Abstractions;

namespace CrewBot.Discord.Tests.Mapping;

public sealed class ExchangeTests
{
    private static CancellationToken Limit => TestContext.Current.CancellationToken;

    [Fact(Timeout = 20_000)]
    public async Task DeferNowAsync_ProcessEndsMeanwhile_IsWaitedForNoLonger()
    {
        await using var stage = await RestStage.OpenAsync();
        stage.Server.Faults.Next(RestStage.Callback, new CannedReply(0) { Silent = true }, times: 9);
        using var stopping = new CancellationTokenSource();
        var interaction = new Interaction { Id = new Snowflake(1), Type = InteractionType.Command, Token = "token-1" };
        using var exchange = new Exchange(
            stage.Api, new ReceivedInteraction(interaction, RestStage.Application, TimeProvider.System.GetTimestamp()), AnswerPlan.Private,
            TimeProvider.System, NullLogger.Instance, stopping.Token);

        var deferral = exchange.DeferNowAsync();
        await stage.Server.NextRequestAsync(RestStage.Callback, Limit);
        await stopping.CancelAsync();

        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => deferral);
    }
}
