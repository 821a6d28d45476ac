using CrewBot.Chat.Catches;
using CrewBot.Chat.Commands;
using CrewBot.Chat.Quantities;
using CrewBot.Core.Trips;
using CrewBot.Storage.Trips;
using UnitsNet;

namespace CrewBot.Chat.Trips;

/// <summary>The card of a trip: one look says where, when, who, with what, and what is missing.</summary>
internal static class TripCard
{
    public static Reply Of(TripScene scene, Request request, string? headline = null)
    {
        var trip = scene.Trip;
        var zone = request.Caller.Zone;
        var show = scene.Contacts.ShowingFor(null, request.Units);
        return new Reply
        {
            Headline = headline ?? $"Trip {trip.Number}: {scene.Water}, {DayTime.Show(trip.MeetAt, zone)}, off the ice by {Until(trip, zone)}{(trip.IsCancelled ? ". Cancelled" : "")}",
            Lines =
            [
                .. Some(trip.Place, place => $"Meet at {place}."),
                .. Some(After(scene, show), after => $"After {after}."),
                $"In: {Who(scene, TripAnswer.In)}.",
                .. Some(Who(scene, TripAnswer.Maybe), who => who == None ? null : $"Maybe: {who}."),
                .. trip.IsCancelled ? [] : Gear(scene),
                .. Some(OnTheIce(scene, request), who => $"On the ice: {who}."),
                .. Some(trip.Note, note => note),
            ],
            Figures = [TripFigures.People.Of(scene.People)],
            Actions = trip.IsCancelled ? [] :
            [
                Button("In", "trip join", ("answer", "in"), scene),
                Button("Maybe", "trip join", ("answer", "maybe"), scene),
                Button("Out", "trip join", ("answer", "out"), scene),
                ReplyAction.Form(
                    "In with others", "trip join", new Dictionary<string, string>(Options(scene)) { ["answer"] = "in" }, TripOptions.Party, TripOptions.Children),
                new ReplyAction("I bring", ActionKind.Run, "trip bring", Options(scene)),
                new ReplyAction("What is missing", ActionKind.Run, "trip need", Options(scene)),
                new ReplyAction("Seats", ActionKind.Run, "trip seats", Options(scene)),
            ],

            // Where the crew has the card before its eyes the answer is for the asker alone.
            Audience = scene.Contacts.Room is null ? Audience.Crew : Audience.Asker,
        };
    }

    /// <summary>"2 CO alarms, 1 auger"; empty for nothing.</summary>
    public static string Missing(TripScene scene) => string.Join(", ", scene.Missing.Select(Missing));

    /// <summary>"walleye at 24 ft (7.3 m)"; null when nobody said what they are after.</summary>
    public static string? After(TripScene scene, Showing show) => (scene.Trip.Species, scene.Trip.Depth) switch
    {
        ({ } species, { } depth) => $"{CatchWords.NameOf(species, scene.Knowledge)} at {show.Depth(depth.Length)}",
        ({ } species, null) => CatchWords.NameOf(species, scene.Knowledge),
        (null, { } depth) => $"whatever bites at {show.Depth(depth.Length)}",
        _ => null,
    };

    public static string Missing(Need need) => need.Rule.Key switch
    {
        "seats" => TripWords.Count(need.Missing, "seat"),
        "drive" => TripWords.Count(need.Missing, "vehicle seat"),
        "sled" => TripWords.Count(need.Missing, "sled"),
        _ => TripWords.Count(need.Missing, need.Rule.Name),
    };

    public static IReadOnlyDictionary<string, string> Options(TripScene scene) =>
        new Dictionary<string, string> { ["trip"] = scene.Trip.Number.ToString(System.Globalization.CultureInfo.InvariantCulture) };

    private const string None = "nobody yet";

    private static ReplyAction Button(string label, string path, (string Name, string Text) option, TripScene scene) =>
        new(label, ActionKind.Run, path, new Dictionary<string, string>(Options(scene)) { [option.Name] = option.Text });

    public static string Until(Trip trip, TimeZoneInfo zone) =>
        TimeZoneInfo.ConvertTime(trip.MeetAt, zone).Date == TimeZoneInfo.ConvertTime(trip.ReturnAt, zone).Date
            ? DayTime.Hour(trip.ReturnAt, zone)
            : DayTime.Show(trip.ReturnAt, zone);

    public static string Who(TripScene scene, TripAnswer answer)
    {
        var parties = scene.Trip.Roster.Parties.Where(party => party.Answer == answer).ToList();
        return parties.Count == 0
            ? None
            : $"{TripWords.Count(parties.Sum(party => party.People), "people")}: {string.Join(", ", parties.Select(party => scene.NameOf(party.MemberId) + Company(party)))}";
    }

    private static string Company(TripParty party)
    {
        var guests = party.People - party.Children - 1;
        return (guests, party.Children) switch
        {
            (0, 0) => "",
            (_, 0) => $" +{guests}",
            (0, _) => $" + {TripWords.Count(party.Children, "child")}",
            _ => $" +{guests} + {TripWords.Count(party.Children, "child")}",
        };
    }

    private static IEnumerable<string> Gear(TripScene scene) =>
        [$"Brought: {Brought(scene)}.", .. Some(Missing(scene), missing => $"Missing: {missing}.")];

    private static string Brought(TripScene scene)
    {
        var all = scene.Brought.GroupBy(gear => gear.Name).Select(same => TripWords.Count(same.Sum(gear => gear.Count), same.Key)).ToList();
        return all.Count == 0 ? "nothing yet; /trip bring" : string.Join(", ", all);
    }

    private static string? OnTheIce(TripScene scene, Request request)
    {
        var parties = scene.Trip.Roster.Parties.Where(party => party.IsOnTheIce)
            .Select(party => $"{scene.NameOf(party.MemberId)}{Overdue(party, request)} (back {DayTime.Say(party.DueBack!.Value, request.At, request.Caller.Zone)})");
        return string.Join(", ", parties);
    }

    private static string Overdue(TripParty party, Request request) => party.DueBack + TripRules.Grace < request.At ? " OVERDUE" : "";

    private static IEnumerable<string> Some(string? text, Func<string, string?> line) =>
        string.IsNullOrEmpty(text) || line(text) is not { } written ? [] : [written];
}
