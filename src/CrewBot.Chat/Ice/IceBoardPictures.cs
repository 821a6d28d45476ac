using System.Globalization;
using CrewBot.Chat.Commands;
using CrewBot.Chat.Pictures;
using CrewBot.Core.Ice;
using CrewBot.Core.Pictures;
using CrewBot.Core.Trips;
using CrewBot.Storage.Ice;
using UnitsNet;

namespace CrewBot.Chat.Ice;

/// <summary>
/// Puts a board into a picture: reports over time, spot by spot, each by the clear ice it counts as, so that no bar flatters beside
/// the lines of what is asked for. Places where no number is given, and bad news, have none here either.
/// </summary>
internal static class IceBoardPictures
{
    private const int MostSpots = 5;
    private const int MostHolesTold = 3;
    private const string Void = "A thaw, 24 h or another spot voids any of these.";

    private static readonly TimeSpan Shortest = TimeSpan.FromDays(1);

    /// <summary>The picture.</summary>
    /// <param name="request">Who asks, and when.</param>
    /// <param name="water">The water's name.</param>
    /// <param name="board">What is on the board.</param>
    /// <param name="rules">What the crew asks of ice beyond the program's figures.</param>
    public static IceBoardPicture Of(Request request, string water, IceBoard board, IceRules rules)
    {
        var spots = SpotsOf(request, water, board);
        var shown = spots.Take(MostSpots).ToList();
        var (required, sources) = RequiredOf(request, rules);
        var from = shown.SelectMany(spot => spot.Reports).Select(report => report.At).Append(request.At - Shortest).Min();
        var more = More(spots.Skip(MostSpots).ToList());
        return new IceBoardPicture(
            $"Ice reported on {water}, by the clear ice it counts as. {string.Join(" ", shown.Select(spot => $"{spot.Name}: {spot.Latest}."))} {more}Lines at {string.Join(", ", required.Select(line => line.Label))}. No ice is safe ice.",
            $"{water}: ice, {TimeZoneInfo.ConvertTime(request.At, request.Caller.Zone).ToString("d MMM HH:mm", CultureInfo.InvariantCulture)}",
            shown,
            required,
            TimeTicks.Axis(from, request.At, request.Caller.Zone),
            $"{(shown.Any(spot => spot.IsBad) ? $"{IceCautions.StayOff} " : "")}{IceCautions.Check} {Void} {IceCautions.Authority}")
        {
            Reading = "Bars: the clear ice that a report counts as. Dashed lines: the least that published rules ask for.",
            Beyond = more + string.Concat(ShowIceBoard.Closed(board.Closed, request)),
            Sources = $"Counted: {IceSheet.HalfRule}. Lines: {sources}.",
        };
    }

    private static string More(List<IceSpot> hidden) => hidden.Count == 0 ? "" :
        $"And {hidden.Count} more spots{(hidden.Count(spot => spot.IsBad) is var bad and > 0 ? $", {bad} of them to stay off" : "")}. ";

    // What stands against the ice first, then the newest.
    private static List<IceSpot> SpotsOf(Request request, string water, IceBoard board)
    {
        var standing = board.Standing.Where(filed => !filed.IsPartners).Select(filed => filed.Number).ToHashSet();
        var own = board.Newest.Concat(board.Standing.Where(filed => !filed.IsPartners)).DistinctBy(filed => filed.Number)
            .GroupBy(filed => SpotName.Plain(filed.Entry.Spot ?? ""))
            .OrderByDescending(spot => spot.Any(filed => standing.Contains(filed.Number)))
            .Select(spot => OwnSpot(request, water, [.. spot.OrderBy(At)], standing));
        return [.. board.Standing.Where(filed => filed.IsPartners).Select(filed => PartnersSpot(request, water, filed)), .. own];
    }

    private static IceSpot OwnSpot(Request request, string water, IReadOnlyList<FiledIce> reports, HashSet<long> standing)
    {
        // Bad news that stands is told before a later measurement.
        var told = reports.LastOrDefault(filed => standing.Contains(filed.Number)) ?? reports[^1];
        var isNumbered = StayOffPlace.In(water, told.Entry.Spot) is null;
        return new IceSpot(
            told.Entry.Spot ?? "No spot named",
            $"{(standing.Contains(told.Number) ? "Stands: " : "")}{Found(told, water, request.Units)}; {IceSheet.Source(told)}, {IceSheet.Age(told, request.At)}",
            [.. reports.Select(filed => Reported(filed, isNumbered, request.At)).OfType<ReportedIce>()])
        {
            IsBad = standing.Contains(told.Number) || !isNumbered,
        };
    }

    private static IceSpot PartnersSpot(Request request, string water, FiledIce filed) => new(
        filed.Entry.Spot ?? "A partner crew's, spot not shared",
        $"Stands: {IceSheet.Standing(filed, water, request)}",
        [new ReportedIce(At(filed), Length.Zero, IceSign.Unsound)])
    {
        IsBad = true,
    };

    private static string Found(FiledIce filed, string water, CrewUnits units) =>
        filed.Entry.Page.Holes.Count > MostHolesTold && IceSheet.IsNumbered(filed, water) && filed.ToReport() is { Weak: null } report
            ? $"{report.Holes.Count} holes, the least counts as {IceShow.Measured(IceSheet.LeastOf(report), units)} of clear ice"
            : IceSheet.Found(filed, water, units);

    // Hearsay has no thickness to draw, and neither has a place where no number is given.
    private static ReportedIce? Reported(FiledIce filed, bool isNumbered, DateTimeOffset now)
    {
        var report = filed.ToReport();
        return report.Hazards.Any(hazard => hazard.Blocks()) || report.Weak is not null || (report.IsBadNews && !report.CanSupport)
            ? new ReportedIce(At(filed), Length.Zero, IceSign.Unsound)
            : !isNumbered || !report.CanSupport ? null
            : report.Holes.MinBy(hole => hole.Effective.Nanometers)! is var least ? new ReportedIce(At(filed), least.Effective, SignOf(least)) { IsOld = !CombinedReports.IsFresh(report, now) }
            : null;
    }

    private static IceSign SignOf(IceSection hole) =>
        hole.IsClear ? IceSign.Clear : hole.Unsorted > Length.Zero ? IceSign.Unknown : IceSign.White;

    private static (IReadOnlyList<RequiredIce> Lines, string Sources) RequiredOf(Request request, IceRules rules)
    {
        var one = Figure(new IceLoad(IceUse.OnFoot, GatheredLoad.Of(1, []).Total, Duration.Zero));
        var group = Figure(new IceLoad(IceUse.Gathering, GatheredLoad.Of(2, []).Total, Duration.Zero));
        RequiredIce Line(Length thickness, string label) => new(thickness, $"{label} {IceShow.RequiredAlone(thickness, request.Units)}");
        return (
            [Line(ProjectFigures.HardStop, "stay off below"), Line(one.Thickness, "one on foot"), Line(group.Thickness, "a group, a sled")],
            $"Minnesota DNR, 22 Dec 2022; on foot {one.Source}, {one.Date}; a group {group.Source}, {group.Date}; more by weight");

        IceFigure Figure(IceLoad load) =>
            Requirement.For(load, rules.Authority, rules.Figures, permitted: false, AirSince.Unknown, request.At).Figures[0];
    }

    private static DateTimeOffset At(FiledIce filed) => filed.Entry.MeasuredAt ?? filed.Entry.FiledAt;
}
