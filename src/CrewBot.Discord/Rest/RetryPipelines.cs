using Polly;
using Polly.Retry;

namespace CrewBot.Discord.Rest;

/// <summary>Repeats attempts with exponential, jittered waits, or with the wait that the server asked for.</summary>
internal sealed class RetryPipelines(TimeProvider clock)
{
    private const int OrdinaryRepeats = 4;
    private const int FirstAnswerRepeats = 8;

    private readonly ResiliencePipeline<Attempt> _ordinary =
        Build(clock, OrdinaryRepeats, first: TimeSpan.FromMilliseconds(500), longest: TimeSpan.FromSeconds(4));

    // A first answer has three seconds in all: many short waits serve it better than a few long ones.
    private readonly ResiliencePipeline<Attempt> _firstAnswer =
        Build(clock, FirstAnswerRepeats, first: TimeSpan.FromMilliseconds(60), longest: TimeSpan.FromMilliseconds(500));

    public ResiliencePipeline<Attempt> For(Route route) => route.Unbucketed ? _firstAnswer : _ordinary;

    private static ResiliencePipeline<Attempt> Build(TimeProvider clock, int repeats, TimeSpan first, TimeSpan longest) =>
        new ResiliencePipelineBuilder<Attempt> { TimeProvider = clock }
            .AddRetry(new RetryStrategyOptions<Attempt>
            {
                MaxRetryAttempts = repeats,
                BackoffType = DelayBackoffType.Exponential,
                UseJitter = true,
                Delay = first,
                MaxDelay = longest,
                ShouldHandle = static retry => ValueTask.FromResult(retry.Outcome.Result.Again),
                DelayGenerator = static retry => ValueTask.FromResult(retry.Outcome.Result.After),
            })
            .Build();
}
