using System.Globalization;
using CrewBot.Chat.Catches;
using CrewBot.Chat.Commands;
using CrewBot.Core.Derbies;
using CrewBot.Core.Derbies.Scoring;
using CrewBot.Core.Fish;
using CrewBot.Storage.Derbies;
using UnitsNet.Units;

namespace CrewBot.Chat.Derbies;

/// <summary>Puts together the derby that somebody asks for; what they left out is as usual.</summary>
internal sealed class DerbyDraft(DerbyOptions options)
{
    /// <summary>How many fish count where nobody says.</summary>
    public const int UsualBest = 3;

    private const int UsualGrace = 15;
    private const int UsualProtests = 60;
    private const int UsualEnd = 16;

    private static readonly TimeSpan ShortestUsual = TimeSpan.FromHours(1);
    private static readonly TimeSpan UsualLength = TimeSpan.FromHours(4);
    private static readonly TimeSpan Longest = TimeSpan.FromDays(60);

    /// <returns>The derby, its place and who set it up still open; or in a line what is wrong with it.</returns>
    public Reading<Derby> Of(Request request)
    {
        var starts = request.TryGet(options.Starts, out var start) ? start.From(request.At, request.Caller.Zone) : request.At;
        var ends = EndsAt(request, starts);
        return FaultOf(request, starts, ends) is { } fault ? new Misread(fault) : new Derby
        {
            Name = request.GetOr(options.Name, $"Derby of {TimeZoneInfo.ConvertTime(starts, request.Caller.Zone).ToString("d MMMM", CultureInfo.InvariantCulture)}"),
            CreatedBy = 0,
            Zone = request.Caller.Zone.Id,
            Settings = SettingsOf(request, new DerbyWindow(starts, ends, TimeSpan.FromMinutes(request.GetOr(options.Grace, UsualGrace)))),
        };
    }

    // Until four in the afternoon; from late starts on, four hours.
    private DateTimeOffset EndsAt(Request request, DateTimeOffset starts)
    {
        var zone = request.Caller.Zone;
        var day = DateOnly.FromDateTime(TimeZoneInfo.ConvertTime(starts, zone).DateTime);
        if (request.TryGet(options.Ends, out var given))
        {
            // A clock time alone belongs to the day of the start.
            return given is { Ago: null, Day: null, DaysBack: 0 } ? (given with { Day = day }).From(request.At, zone) : given.From(request.At, zone);
        }

        var usual = new Moment(null, 0, day, new TimeOnly(UsualEnd, 0)).From(request.At, zone);
        return usual - starts >= ShortestUsual ? usual : starts + UsualLength;
    }

    private string? FaultOf(Request request, DateTimeOffset starts, DateTimeOffset ends)
    {
        if (ends <= starts)
        {
            return $"It would end {Moment.Show(ends, request.At)}, before it starts {Moment.Show(starts, request.At)}: give a later end, such as ends:\"tomorrow 02:00\" across midnight.";
        }

        if (ends <= request.At)
        {
            return $"It would be over already at {Moment.Show(ends, request.At)}: give an end to come, such as ends:\"tomorrow 15:00\".";
        }

        if (ends - starts > Longest)
        {
            return $"{(ends - starts).TotalDays:0} days is longer than a derby: at most {Longest.TotalDays:0}.";
        }

        var isPoints = request.GetOr(options.Format, DerbyFormat.BestTotal) == DerbyFormat.Points;
        return isPoints == request.Has(options.Factors) ? null : "Points and factors go together: give format:points factors:\"walleye 1, perch 2\".";
    }

    private DerbySettings SettingsOf(Request request, DerbyWindow window) => new()
    {
        Window = window,
        Grid = new MeasuringGrid(request.GetOr(options.Step, UsualStep(request.Units)), request.GetOr(options.Rounding, Rounding.Down)),
        Scoring = ScoringOf(request),
        Limits = new EntryLimits
        {
            Minimum = request.TryGet(options.Minimum, out var least) ? least : null,
            Species = [.. request.GetOr(options.Species, []).Select(species => species.Key).Distinct()],
            Waters = request.TryGet(options.Water, out var water) ? [water.Name] : [],
            Kept = request.TryGet(options.OnlyFate, out var kept) ? kept : null,
            MostEntries = request.TryGet(options.MostEntries, out var most) ? most : null,
        },
        Evidence = request.GetOr(options.Proof, Evidence.Crewmate),
        Ties = [.. request.GetOr(options.Ties, [TieBreak.Earliest]).OfType<TieBreak>()],
        Ranking = request.GetOr(options.Ranking, RankNumbers.Standard),
        Teams = request.TryGet(options.Teams, out var pooled)
            ? new TeamScoring(pooled, !pooled && request.TryGet(options.TeamBest, out var members) ? members : null)
            : null,
        ProtestTime = TimeSpan.FromMinutes(request.GetOr(options.Protests, UsualProtests)),
    };

    private ScoringRule ScoringOf(Request request)
    {
        int? best = request.TryGet(options.Best, out var most) ? most : null;
        int? ofEach = request.TryGet(options.BestOfEach, out var each) ? each : null;
        return request.GetOr(options.Format, DerbyFormat.BestTotal) switch
        {
            DerbyFormat.Longest => ScoringRule.Longest,
            DerbyFormat.OneOfEach => new(new LengthMeasure(), new FishSelection(best, ofEach ?? 1)),
            DerbyFormat.Points => new(new PointsMeasure(request.Get(options.Factors)), new FishSelection(best, ofEach)),
            DerbyFormat.SpeciesFair => new(new TrophyShareMeasure(), new FishSelection(best ?? UsualBest, ofEach)),
            DerbyFormat.Condition => new(new ConditionMeasure(), new FishSelection(best ?? UsualBest, ofEach)),
            DerbyFormat.MostFish => new(new CountMeasure(), new FishSelection(best, ofEach)),
            _ => new(new LengthMeasure(), new FishSelection(best ?? (ofEach is null ? UsualBest : null), ofEach)),
        };
    }

    private static ExactLength UsualStep(CrewUnits units) => units == CrewUnits.Customary
        ? ExactLength.From(0.25m, LengthUnit.Inch)
        : ExactLength.From(0.5m, LengthUnit.Centimeter);
}
