using CrewBot.Chat.Catches;
using CrewBot.Core.Derbies;
using CrewBot.Core.Derbies.Scoring;
using CrewBot.Core.Knowledge;
using CrewBot.Storage.Derbies;

namespace CrewBot.Chat.Derbies;

/// <summary>States the rules of a derby in plain words, from its settings.</summary>
internal sealed class DerbyRules(Derby derby, TradeKnowledge knowledge)
{
    private readonly DerbyWords _words = new(derby, knowledge);

    private DerbySettings Settings => derby.Settings;

    private EntryLimits Limits => derby.Settings.Limits;

    /// <summary>The rules, at most eight lines.</summary>
    public IReadOnlyList<string> Lines(DateTimeOffset now) =>
    [
        When(now),
        $"Score: {Score()}.{Team()}",
        $"Measuring: nose to pinched tail, {Line()} of {_words.Length(Settings.Grid.Step)} steps counts{(Limits.Minimum is { } least ? $"; at least {_words.Length(least)}" : "")}.",
        $"Fish: {Species()}{(Limits.Waters.Count > 0 ? $" from {string.Join(" or ", Limits.Waters)}" : "")}; {Fate()}.{(Limits.MostEntries is { } most ? $" At most {most} entries each." : "")}",
        $"Evidence: {Evidence()}",
        $"Ties: {Ties()}; places count {Ranking()}.",
        $"Protests: until {_words.Time(Settings.Window.LastWord + Settings.ProtestTime, now)}. A steward rules; their own fish are another steward's matter.",
        "Local rules and safe ice come first. It keeps score: nothing is staked or paid here.",
    ];

    private string When(DateTimeOffset now)
    {
        var window = Settings.Window;
        var grace = window.Grace > TimeSpan.Zero ? $"; word of them until {_words.Time(window.LastWord, now)}" : "";
        return $"Time: fish caught from {_words.Time(window.Starts, now)} to {_words.Time(window.Ends, now)} count ({derby.Zone}){grace}.";
    }

    private string Score()
    {
        var (measure, (most, ofEach)) = (Settings.Scoring.Measure, Settings.Scoring.Selection);
        var which = (most, ofEach) switch
        {
            (null, null) => "all your fish",
            (1, _) => "your best fish",
            ({ } best, null) => $"your best {best} fish",
            (null, 1) => "your best fish of each species",
            (null, { } each) => $"your best {each} fish of each species",
            ({ } best, { } each) => $"your best {best} fish, {each} of each species at most",
        };
        return measure switch
        {
            LengthMeasure when most == 1 => "your longest fish",
            LengthMeasure => $"the total length of {which}",
            PointsMeasure points => $"length times points, of {which}: {string.Join(", ", points.Factors.Select(pair => $"{CatchWords.NameOf(pair.Key, knowledge)} {pair.Value:0.###}"))}",
            TrophyShareMeasure => $"length as a share of the species' trophy length, of {which}",
            ConditionMeasure => $"weight as a share of the standard weight, of {which}; only weighed fish",
            _ => most is { } limit ? $"how many fish, up to {limit}" : "how many fish",
        };
    }

    private string Team() => Settings.Teams switch
    {
        null => "",
        { IsPooled: true } => " Teams: the best of all members' fish together.",
        { BestMembers: { } best } => $" Teams: the totals of the best {best} members.",
        _ => " Teams: the totals of all members.",
    };

    private string Line() => Settings.Grid.Rounding switch
    {
        Rounding.Down => "the line below",
        Rounding.Nearest => "the nearer line",
        _ => "the line above",
    };

    private string Species() => Limits.Species.Count > 0
        ? string.Join(", ", Limits.Species.Select(key => CatchWords.NameOf(key, knowledge)))
        : "every species";

    private string Fate() => Limits.Kept switch
    {
        null => "kept or released both count",
        true => "only kept fish count",
        false => "only released fish count",
    };

    private string Evidence() => Settings.Evidence switch
    {
        Core.Derbies.Evidence.Crewmate => "a crewmate's word. Whoever stands beside taps I saw it; a photo is welcome, never needed.",
        Core.Derbies.Evidence.Photo => $"a photo on the board. {ColdPhoto.Text}",
        _ => "your own word.",
    };

    private string Ties() => Settings.Ties.Count > 0
        ? $"{string.Join(", then ", Settings.Ties.Select(DerbyWords.Tie))}; what is still level shares its place"
        : "equal totals share their place";

    private string Ranking() => Settings.Ranking switch
    {
        RankNumbers.Standard => "1, 2, 2, 4",
        RankNumbers.Dense => "1, 2, 2, 3",
        RankNumbers.Modified => "1, 3, 3, 4",
        _ => "1, 2.5, 2.5, 4",
    };
}
