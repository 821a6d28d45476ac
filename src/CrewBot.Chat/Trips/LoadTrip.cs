using CrewBot.Chat.Commands;
using CrewBot.Chat.Ice;
using CrewBot.Chat.Rigs;
using CrewBot.Core.Ice;
using CrewBot.Core.Knowledge;
using CrewBot.Core.Trips;
using CrewBot.Storage.Ice;
using UnitsNet;

namespace CrewBot.Chat.Trips;

/// <summary>
/// Answers <c>/trip load</c>: what stands on the ice when the trip gathers at a spot, beside what was measured there today by
/// the rules of the ice board. No measurement, no answer.
/// </summary>
public sealed class LoadTrip(TripOptions options, TripDesk desk) : ICommandHandler
{
    public CommandInfo Info { get; } = new(
        "trip load", "What stands on the ice when everybody gathers, beside what was measured there", "/trip load spot:\"north hump\" warmest:20F",
        [options.Spot, options.Warmest, options.Trip]);

    public Task<Reply> HandleAsync(Request request, CancellationToken cancellationToken) => desk.ReadAsync(request, async (scene, session) =>
    {
        var rules = new IceRuleRepository(session);
        var spot = request.GetOr(options.Spot, null!);
        var air = new AirSince(request.TryGet(options.Warmest, out var warmest) ? warmest : null, null);
        var gathered = GatheredLoad.Of(scene.People, scene.Brought);
        var (authority, figures) = (await rules.AuthorityAsync(), await rules.FiguresAsync());
        CarryAnswer Carried(Mass mass) => CarryAnswer.Of(
            Requirement.For(Standing(mass, scene), authority, figures, permitted: false, air, request.At), scene.Ice.At(spot, air, request.At));
        if (StayOffPlace.In(scene.Water, spot) is { } word)
        {
            return Reply.Refuse($"No number is ever given for a place like that ({word}): stay off, or ask the local authority.");
        }

        var answer = Answer(request, scene, gathered, Carried(gathered.Total), Heaviest(scene) is { } alone ? (alone.Name, Carried(alone.Mass)) : null);
        return answer with { Lines = [.. await SpotOffer.ForAsync(session, scene.Water, spot), .. answer.Lines] };
    }, cancellationToken);

    private Reply Answer(Request request, TripScene scene, GatheredLoad load, CarryAnswer together, (string Name, CarryAnswer Answer)? apart) => new()
    {
        Headline = $"Trip {scene.Trip.Number} gathered in one place: {request.Show.Fish(load.Total)}",
        Lines =
        [
            $"{TripWords.Count(scene.People, "people")}, dressed for the ice: {request.Show.Fish(load.People)}; shelters, sleds, machines and gear: {request.Show.Fish(load.Gear)}.",
            .. together.Standing.Least is null ? [] : Comparisons(request, together, apart),
            Measured(request, together),
            Spacing(request, together.Standing),
        ],
        Figures = [TripFigures.People.Of(scene.People), TripFigures.Load.Of(load.Total)],
        Reasons = together.Standing.Least is null ? [] : [.. together.Requirement.Figures.Select(figure => $"{IceShow.Required(figure.Thickness, request.Units)}: {figure.Rule.ToString(request.Show)} ({figure.Source}, {figure.Date}).")],
        Cautions =
        [
            .. IceCautions.Of(together.Verdict is CarryVerdict.StayOff or CarryVerdict.LessThanRequired),
            "Anything that stands longer than 2 hours, and any vehicle: ask the local authority.",
        ],
        Actions = ReplyAction.WhyAndShare(request),
    };

    private static IEnumerable<string> Comparisons(Request request, CarryAnswer together, (string Name, CarryAnswer Answer)? apart)
    {
        yield return $"All in one place, up to {IceLoad.LongestStay.Hours:0} h: {Asked(request, together)}";
        if (apart is { } one)
        {
            yield return $"Shelters set apart, the heaviest ({one.Name}, full): {Asked(request, one.Answer)}";
        }
    }

    private static string Asked(Request request, CarryAnswer answer) => answer.Requirement.Thickness is { } asked
        ? $"published rules ask for {IceShow.Required(asked, request.Units)} of new clear ice{answer.Verdict switch
        {
            CarryVerdict.MeetsTheFigure => "; what was measured meets that, which is no clearance",
            CarryVerdict.LessThanRequired => "; LESS was measured: do not gather so",
            CarryVerdict.StayOff => "; stay off",
            _ => "",
        }}."
        : $"no figure, {answer.Requirement.WhyNone!.ToString(request.Show)}.";

    private string Measured(Request request, CarryAnswer answer) => answer.Standing switch
    {
        { Blocking: [var bad, ..] } => $"Bad news #{bad.Number} stands there: stay off until it is closed.",
        { Least: { } least, Governing: { } governing } =>
            $"Measured there: least {IceShow.Measured(least, request.Units)} as clear ice, by {governing.MeasuredBy}, {IceShow.Age(request.At - governing.MeasuredAt!.Value)}.",
        _ when !request.Has(options.Spot) => "No spot was named, so nothing measured stands beside it: give spot:\"north hump\".",
        { Why: { } why } => $"{RigWords.Sentence(why.ToString(request.Show))}.",
        _ => "No answer: nothing was measured there.",
    };

    private static string Spacing(Request request, IceStanding standing) => standing.Least is { } least
        ? $"Set shelters well apart and do not crowd round one hole; machines at least {request.Show.Depth(VehicleSpacing.On(least))} from each other and from shelters."
        : "Set shelters well apart, keep machines away from them, and do not crowd round one hole.";

    // The published rules are for what stands up to two hours; a whole day is for the local authority.
    private static IceLoad Standing(Mass mass, TripScene scene) => new(
        scene.Brought.Any(gear => gear.Family == GearFamily.Machine) ? IceUse.Snowmobile : IceUse.Gathering, mass, IceLoad.LongestStay);

    private static (string Name, Mass Mass)? Heaviest(TripScene scene) => scene.Brought
        .Where(gear => gear is { Family: GearFamily.Shelter, Seats: > 0 })
        .Select(gear => ((string, Mass)?)(gear.Name, GatheredLoad.Of(Math.Min(gear.Seats, scene.People), []).Total + gear.Mass))
        .MaxBy(one => one!.Value.Item2.Kilograms);
}
