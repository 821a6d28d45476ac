namespace CrewBot.Discord.Rest;

/// <summary>The call would have to wait longer than its caller can.</summary>
internal sealed class RateLimitedException(Route route, TimeSpan wait)
    : DiscordApiException(route, $"limited for another {wait.TotalSeconds:0.###} s, longer than the call can wait")
{
    public TimeSpan Wait { get; } = wait;
}
