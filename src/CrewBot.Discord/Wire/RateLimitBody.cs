namespace CrewBot.Discord.Wire;

/// <summary>Body of a 429: how long to wait, in seconds.</summary>
internal sealed record RateLimitBody
{
    public double? RetryAfter { get; init; }
    public bool? Global { get; init; }
}
