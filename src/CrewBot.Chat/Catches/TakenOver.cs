using CrewBot.Chat.Commands;
using CrewBot.Core.Fish;
using CrewBot.Core.Knowledge;
using CrewBot.Storage.Catches;

namespace CrewBot.Chat.Catches;

/// <summary>
/// What an entry takes over, where nothing was said, from the angler's lines in the water, from today's trip and from their
/// last fish. A water is stayed on for the day, a hole for some hours; a mood is the fish's own and passes sooner.
/// </summary>
/// <param name="request">Who logs.</param>
/// <param name="knowledge">The trade.</param>
/// <param name="down">The angler's lines in the water; null for none.</param>
/// <param name="last">The angler's last fish; null for none.</param>
/// <param name="trip">The trip that the angler was on when it was caught; null for none.</param>
/// <param name="at">When the fish was caught.</param>
internal sealed class TakenOver(Request request, TradeKnowledge knowledge, LineSpell? down, LastCatch? last, TripToday? trip, DateTimeOffset at)
{
    private static readonly TimeSpan SameOuting = TimeSpan.FromHours(12);
    private static readonly TimeSpan SameHole = TimeSpan.FromHours(4);
    private static readonly TimeSpan SameMood = TimeSpan.FromHours(2);

    private readonly List<string> _fromLines = [];
    private readonly List<string> _fromTrip = [];
    private readonly List<string> _fromLast = [];

    /// <summary>What was taken over, in words, with where from.</summary>
    public IReadOnlyList<string> Named =>
    [
        .. _fromLines.Count > 0 ? [$"{string.Join(", ", _fromLines)} as your lines are down"] : (string[])[],
        .. _fromTrip.Count > 0 ? [$"{string.Join(", ", _fromTrip)} as on trip {trip!.Number}"] : (string[])[],
        .. _fromLast.Count > 0 ? [$"{string.Join(", ", _fromLast)} as at #{last!.Number}"] : (string[])[],
    ];

    /// <summary>What the trip is after; null when nobody said.</summary>
    public Species? Species()
    {
        if (trip?.Species is not { } key || !knowledge.Species.Has(key))
        {
            return null;
        }

        _fromTrip.Add(knowledge.Species[key].Name);
        return knowledge.Species[key];
    }

    /// <summary>The water's name.</summary>
    public string? Water() => down?.Water is { } lying
        ? Noted(_fromLines, lying)
        : trip is { } day ? Noted(_fromTrip, day.Water)
        : Last(SameOuting)?.Water is { } before ? Noted(_fromLast, before) : null;

    /// <summary>The depth, for a fish of this water.</summary>
    public ExactLength? Depth(string? water)
    {
        if (down?.Depth is { } fished)
        {
            _fromLines.Add(CatchWords.Depth(fished, request));
            return fished;
        }

        var (from, deep) = Last(SameHole) is { Depth: { } hole } fish && fish.Water == water ? (_fromLast, hole)
            : trip is { Depth: { } meant } && trip.Water == water ? (_fromTrip, meant)
            : (_fromLast, default(ExactLength?));
        if (deep is { } depth)
        {
            from.Add(CatchWords.Depth(depth, request));
        }

        return deep;
    }

    /// <summary>Key of the presentation, for a fish of this water.</summary>
    public string? Presentation(string? water)
    {
        var (from, key) = down?.Presentation is { } fished ? (_fromLines, fished)
            : Last(SameHole) is { } fish && fish.Water == water ? (_fromLast, fish.Presentation)
            : (_fromLast, null);
        if (key is not null)
        {
            from.Add(CatchWords.PresentationOf(key, knowledge));
        }

        return key;
    }

    /// <summary>The mood, for a fish of this species and water.</summary>
    public string? Mood(string species, string? water)
    {
        if (down?.Mood is { } willing)
        {
            _fromLines.Add($"{willing} mood");
            return willing;
        }

        if (Last(SameMood) is not { } fish || fish.Water != water || fish.Species != species || fish.Mood is not { } mood)
        {
            return null;
        }

        _fromLast.Add($"{mood} mood");
        return mood;
    }

    private LastCatch? Last(TimeSpan within) => last is not null && (at - last.CaughtAt).Duration() < within ? last : null;

    private static string Noted(List<string> from, string name)
    {
        from.Add(name);
        return name;
    }
}
