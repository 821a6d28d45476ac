namespace CrewBot.Discord.Rest;

/// <summary>What an answer means for its own call and for the calls after it.</summary>
internal readonly record struct Verdict(Attempt Attempt)
{
    public TimeSpan? PauseEverything { get; init; }
    public TimeSpan? PauseBucket { get; init; }
    public string? Reason => Attempt.Failure?.Message;
}
