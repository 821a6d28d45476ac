using System.Collections.Concurrent;
using CrewBot.Chat.Commands;
using CrewBot.Core.Effort;
using CrewBot.Core.Knowledge;

namespace CrewBot.Chat.Learning;

/// <summary>
/// What the crews' own fishing says to a plan. It is kept for a few minutes: reading a big log takes longer than planning,
/// and ten minutes of fishing change no season.
/// </summary>
public sealed class ExperienceDesk(TradeKnowledge knowledge, CrewBook book)
{
    private const int MostKept = 1000;

    private static readonly TimeSpan KeptFor = TimeSpan.FromMinutes(10);

    private readonly ConcurrentDictionary<(string Crew, string Species, Mood Mood, int Month), (DateTimeOffset At, CrewExperience? Found)> _kept = new();

    /// <summary>What the caller's crew has learned of a species in a mood at this time of the year; null when nothing.</summary>
    public async Task<CrewExperience?> OfAsync(Request request, Species species, Mood mood, CancellationToken cancellationToken)
    {
        if (request.Caller.Crew is not { } crew)
        {
            return null;
        }

        var month = TimeZoneInfo.ConvertTime(request.At, request.Caller.Zone).Month;
        var key = (crew, species.Key, mood, month);
        if (_kept.TryGetValue(key, out var kept) && (request.At - kept.At).Duration() < KeptFor)
        {
            return kept.Found;
        }

        var record = await book.ReadOrAsync(
            request,
            async session => (FishingRecord?)await FishingRecord.ReadAsync(session, DateTimeOffset.UnixEpoch, request.At, null, species.Key),
            null, cancellationToken);
        if (record is null)
        {
            return null;
        }

        if (_kept.Count >= MostKept)
        {
            _kept.Clear();
        }

        var found = CrewExperience.Of(record.Spells, record.Fish, species, mood, month, knowledge);
        _kept[key] = (request.At, found);
        return found;
    }
}
