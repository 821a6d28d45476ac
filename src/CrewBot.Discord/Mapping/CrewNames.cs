using CrewBot.Discord.Rest;
using CrewBot.Discord.Wire;
using Microsoft.Extensions.Logging;

namespace CrewBot.Discord.Mapping;

/// <summary>
/// What a crew's server is called. An interaction carries only its id, so the platform is asked, at most once an hour; where
/// it does not answer soon, what the crew's book remembers is good enough.
/// </summary>
internal sealed class CrewNames(DiscordApi api, TimeProvider clock, ILogger<CrewNames> log)
{
    private static readonly TimeSpan StaysTrue = TimeSpan.FromHours(1);
    private static readonly TimeSpan AnswerWithin = TimeSpan.FromSeconds(2);

    private readonly Lock _gate = new();
    private readonly Dictionary<Snowflake, (Task<string?> Asked, DateTimeOffset At)> _kept = [];

    /// <summary>The name; null where the platform does not say.</summary>
    public Task<string?> OfAsync(Snowflake guild)
    {
        var now = clock.GetUtcNow();
        lock (_gate)
        {
            if (!_kept.TryGetValue(guild, out var known) || now - known.At >= StaysTrue)
            {
                _kept[guild] = known = (AskAsync(guild), now);
            }

            return known.Asked;
        }
    }

    private async Task<string?> AskAsync(Snowflake guild)
    {
        using var enough = new CancellationTokenSource(AnswerWithin, clock);
        try
        {
            var name = (await api.GetGuildAsync(guild, enough.Token)).Name;
            return string.IsNullOrWhiteSpace(name) ? null : name;
        }
        catch (Exception unknown) when (unknown is DiscordApiException or OperationCanceledException)
        {
            log.LogInformation("Could not ask what server {Guild} is called: {Reason}", guild, unknown.Message);
            return null;
        }
    }
}
