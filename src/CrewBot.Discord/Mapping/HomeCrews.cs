using System.Collections.Concurrent;
using System.Net;
using CrewBot.Chat.Commands;
using CrewBot.Discord.Rest;
using CrewBot.Discord.Wire;

namespace CrewBot.Discord.Mapping;

/// <summary>
/// Finds the crew that a direct message is about: of those that the person has written in, the latest. The platform is
/// asked whether they are still in it, so that nobody who left reads on from outside.
/// </summary>
internal sealed class HomeCrews(CrewBook book, DiscordApi api, TimeProvider clock)
{
    private const int MostKept = 4_096;
    private static readonly TimeSpan StaysTrue = TimeSpan.FromMinutes(10);

    private readonly ConcurrentDictionary<(Snowflake Guild, Snowflake Person), (Member? Member, DateTimeOffset At)> _kept = new();

    /// <summary>The crew; null when the person is in none that CrewBot knows.</summary>
    /// <exception cref="DiscordApiException">The platform can't say now.</exception>
    public async Task<HomeCrew?> FindAsync(Snowflake person, CancellationToken cancellationToken)
    {
        HomeCrew? latest = null;
        foreach (var crew in await book.CrewsOfAsync(person.ToString(), cancellationToken))
        {
            if (Snowflake.TryParse(crew, out var guild) && await MemberAsync(guild, person, cancellationToken) is { } member)
            {
                if (latest is not null)
                {
                    return latest with { IsOneOfSeveral = true };
                }

                latest = new HomeCrew(guild, member, IsOneOfSeveral: false);
            }
        }

        return latest;
    }

    private async Task<Member?> MemberAsync(Snowflake guild, Snowflake person, CancellationToken cancellationToken)
    {
        var now = clock.GetUtcNow();
        if (_kept.TryGetValue((guild, person), out var known) && now - known.At < StaysTrue)
        {
            return known.Member;
        }

        if (_kept.Count >= MostKept)
        {
            _kept.Clear();
        }

        var member = await AskAsync(guild, person, cancellationToken);
        _kept[(guild, person)] = (member, now);
        return member;
    }

    private async Task<Member?> AskAsync(Snowflake guild, Snowflake person, CancellationToken cancellationToken)
    {
        try
        {
            return await api.GetMemberAsync(guild, person, cancellationToken);
        }
        catch (DiscordApiException none) when (none.Status is HttpStatusCode.NotFound or HttpStatusCode.Forbidden)
        {
            return null;
        }
    }
}
