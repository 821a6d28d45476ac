using CrewBot.Chat.Commands;
using CrewBot.Core.Pictures;
using CrewBot.Core.Trips.Seating;

namespace CrewBot.Chat.Trips;

/// <summary>Answers <c>/trip seats</c>: who sits where. Those who were told before move as little as can be.</summary>
public sealed class SeatTrip(TripOptions options, TripDesk desk) : ICommandHandler
{
    private const int MostLines = 5;

    public CommandInfo Info { get; } = new(
        "trip seats", "Who sits in which shelter, and which shelters to haul", "/trip seats trip:1", [options.Trip, options.Look])
    {
        Writes = true,
    };

    public Task<Reply> HandleAsync(Request request, CancellationToken cancellationToken) => request.Has(options.Look)
        ? desk.ReadAsync(request, scene => Look(request, scene), cancellationToken)
        : desk.ChangeAsync(request, (scene, _, _) => Task.FromResult(Seat(request, scene)), cancellationToken);

    private Reply Look(Request request, TripScene scene)
    {
        var seated = Seat(request, scene);
        return seated.Refusal ?? seated.Answer!(scene);
    }

    private TripChange Seat(Request request, TripScene scene)
    {
        if (scene.People == 0)
        {
            return TripChange.Refuse("Nobody has said that they come: /trip join answer:in.");
        }

        var ask = scene.SeatingAsk();
        var outcome = SeatingPlanner.Seat(ask);
        if (outcome.Plan is not { } plan)
        {
            return TripChange.Refuse($"Not everybody can sit. {outcome.Obstacle}");
        }

        var trip = scene.Trip with { Roster = scene.Trip.Roster with { Seats = plan.Places } };
        return TripChange.To(trip, seated => Answer(request, seated, ask, plan));
    }

    private Reply Answer(Request request, TripScene scene, SeatingAsk ask, SeatingPlan plan) => new()
    {
        Headline = $"Seats for {TripWords.Count(ask.People.Count, "people")} in {TripWords.Count(plan.Hauled.Count, "shelter")}{Home(ask, plan)}",
        Lines =
        [
            .. Tables(ask, plan).Take(MostLines),
            .. plan.Hauled.Count > MostLines ? (string[])[$"…and {TripWords.Count(plan.Hauled.Count - MostLines, "more shelter")}: Why shows them."] : [],
            .. Against(ask, plan),
            .. IsTold(scene, plan) ? Moved(ask, plan) : ["Not told yet: /trip seats tells it."],
        ],
        Figures =
        [
            TripFigures.People.Of(ask.People.Count), TripFigures.Shelters.Of(plan.Hauled.Count),
            TripFigures.Unmet.Of(plan.Unmet.Count), TripFigures.Moved.Of(plan.Moved.Count),
        ],
        Reasons =
        [
            .. Tables(ask, plan).Skip(MostLines),
            .. plan.Unmet.Select(wish => $"Not met: {Wish(ask, wish)}."),
            plan.IsOptimal
                ? "No seating is better: first as few moves as possible, then wishes, smoke-free air, and shelters to haul."
                : $"Good, not proven best: at best {plan.Bound.Unmet} wishes unmet and {TripWords.Count(plan.Bound.Hauled, "shelter")}.",
        ],
        Pictures = [Picture.Of("seats", request, () => Pictured(ask, plan))],
        Actions = Looks(request),
    };

    // Whoever only wants to see it, or to show it, moves nobody.
    private IReadOnlyList<ReplyAction> Looks(Request request)
    {
        var look = new Dictionary<string, string>(request.Written) { [options.Look.Name] = "yes" };
        return
        [
            new("Picture", ActionKind.Picture, request.Path, look),
            new("Why", ActionKind.Why, request.Path, look),
            new("Share", ActionKind.Share, request.Path, look),
        ];
    }

    private static bool IsTold(TripScene scene, SeatingPlan plan) =>
        plan.Places.All(place => scene.Trip.Roster.Seats.TryGetValue(place.Key, out var told) && told == place.Value);

    private static SeatingPicture Pictured(SeatingAsk ask, SeatingPlan plan)
    {
        var title = $"Seats for {TripWords.Count(ask.People.Count, "people")} in {TripWords.Count(plan.Hauled.Count, "shelter")}";
        return new($"{title}. {string.Join(" ", Tables(ask, plan))}", title, [.. plan.Hauled.Select(key =>
        {
            var shelter = ask.Shelters.First(one => one.Key == key);
            return new PicturedShelter(shelter.Name, shelter.Seats, [.. ask.People.Where(person => plan.Places[person.Key] == key).Select(person => person.Name)]);
        })]);
    }

    private static IEnumerable<string> Tables(SeatingAsk ask, SeatingPlan plan) => plan.Hauled.Select(shelter =>
    {
        var offered = ask.Shelters.First(one => one.Key == shelter);
        var inside = ask.People.Where(person => plan.Places[person.Key] == shelter).Select(person => person.Name).ToList();
        return $"{offered.Name} ({inside.Count} of {offered.Seats}): {string.Join(", ", inside.GroupBy(name => name).Select(same => same.Count() == 1 ? same.Key : $"{same.Key} ×{same.Count()}"))}.";
    });

    // Who asked for something else reads it here, not only under Why.
    private static IEnumerable<string> Against(SeatingAsk ask, SeatingPlan plan)
    {
        var smoke = plan.InSmoke.Select(key => Name(ask, key)).Distinct().ToList();
        if (plan.Unmet.Count > 0)
        {
            yield return plan.Unmet.Count == 1 ? $"Not met: {Wish(ask, plan.Unmet[0])}." : $"{plan.Unmet.Count} wishes are not met: Why shows them.";
        }

        if (smoke.Count > 0)
        {
            yield return $"With a smoker: {string.Join(", ", smoke)}. Ask them to smoke outside.";
        }
    }

    private static string Wish(SeatingAsk ask, SeatingWish wish) =>
        $"{Name(ask, wish.One)} {(wish.IsApart ? "apart from" : "with")} {Name(ask, wish.Other)}";

    private static string Home(SeatingAsk ask, SeatingPlan plan) => ask.Shelters.Count - plan.Hauled.Count is var home and > 0
        ? $"; {TripWords.Count(home, "more shelter")} can stay at home"
        : "";

    private static IEnumerable<string> Moved(SeatingAsk ask, SeatingPlan plan) => plan.Moved.Count == 0 ? [] :
        [$"Sit elsewhere than before: {string.Join(", ", plan.Moved.Select(key => Name(ask, key)))}."];

    private static string Name(SeatingAsk ask, string key) => ask.People.First(person => person.Key == key).Name;
}
