using System.Globalization;
using CrewBot.Chat.Catches;
using CrewBot.Chat.Commands;
using CrewBot.Chat.Posts;
using CrewBot.Storage.Outbox;
using CrewBot.Storage.Trips;

namespace CrewBot.Chat.Trips.Unasked;

/// <summary>What is said of a party that is not back in time: to the crew and to whoever it calls, until somebody says that it is back.</summary>
internal static class OverduePosts
{
    private const string LateLine = "Late: the bot was down, or the chat out of reach, when this was due.";

    /// <summary>What shall be said unless the parties on the ice come back in time.</summary>
    public static IEnumerable<PlannedPost> Of(TripScene scene, TimeZoneInfo zone) => scene.Trip.IsCancelled ? [] :
        scene.Trip.Roster.Parties.Where(party => party.IsOnTheIce).SelectMany(party => scene.Contacts.AlertPlaces.Select(place =>
            new PlannedPost(KeyOf(scene, party, place), place, Alert(scene, party, place, zone), party.DueBack!.Value + TripRules.Grace)
            {
                Manner = new PostManner { Notifies = true, LateLine = LateLine, Again = TripRules.AlertAgain },
                IsUrgent = true,
            }));

    /// <summary>What an alert says that no longer holds; null for what is no alert.</summary>
    public static Reply? Ended(TripScene scene, string key, TimeZoneInfo zone) =>
        scene.Trip.Roster.Parties.FirstOrDefault(party => key.StartsWith(Start(scene, party), StringComparison.Ordinal)) is { } party
            ? new Reply { Headline = $"No longer overdue: {Ending(scene, party, zone)}", Audience = Audience.Crew }
            : null;

    private static string Ending(TripScene scene, TripParty party, TimeZoneInfo zone) => party switch
    {
        { BackAt: { } back } => $"{Name(scene, party)} back at {DayTime.Say(back, party.OutAt!.Value, zone)}",
        { DueBack: { } due } => $"{Name(scene, party)} said to be late, back by {DayTime.Say(due, party.OutAt!.Value, zone)}",
        _ => Name(scene, party),
    };

    private static Reply Alert(TripScene scene, TripParty party, string place, TimeZoneInfo zone)
    {
        var trip = scene.Trip;
        var options = new Dictionary<string, string>(TripCard.Options(scene)) { ["who"] = scene.NameOf(party.MemberId) };
        return new Reply
        {
            Headline = $"OVERDUE: {Name(scene, party)}, to be back by {DayTime.Show(party.DueBack!.Value, zone)}",
            Lines =
            [
                $"Last known: {scene.Water}{(party.Spot is { } spot ? $", {spot}" : "")}, out since {DayTime.Say(party.OutAt!.Value, party.DueBack!.Value, zone)}.",
                $"Plan: trip {trip.Number}{(trip.Place is { } meet ? $", met at {meet}" : "")}, everybody off the ice by {DayTime.Show(trip.ReturnAt, zone)}{(trip.Species is { } species ? $", after {CatchWords.NameOf(species, scene.Knowledge)}" : "")}.",
                .. trip.Note is { } note ? (string[])[$"Note: {note}"] : [],
                $"Try to reach them. No answer: call {scene.Contacts.EmergencyNumber} and say the above. Nobody follows them onto the ice alone.",
                "The bot calls nobody. It says this again every "
                + $"{TripRules.AlertAgain.TotalMinutes.ToString(CultureInfo.InvariantCulture)} min until somebody says that they are back.",
            ],
            Actions =
            [
                new ReplyAction("They are back", ActionKind.Run, "trip back", options),
                new ReplyAction("Heard from them: 1 h later", ActionKind.Run, "trip late", new Dictionary<string, string>(options) { ["by"] = "+1h" }),
            ],
            Calls = place == (scene.Contacts.Contact ?? scene.Contacts.Room) ? scene.Contacts.Crew.ContactRole : null,
            Audience = Audience.Crew,
        };
    }

    private static string Name(TripScene scene, TripParty party) =>
        party.People == 1 ? scene.NameOf(party.MemberId) : $"{scene.NameOf(party.MemberId)} and party ({party.People})";

    // Another time to be back is another alert: the one that was shown stays, and says that it has ended.
    private static string KeyOf(TripScene scene, TripParty party, string place) => string.Create(
        CultureInfo.InvariantCulture, $"{Start(scene, party)}{party.DueBack!.Value.ToUnixTimeSeconds()}/{place}");

    private static string Start(TripScene scene, TripParty party) =>
        string.Create(CultureInfo.InvariantCulture, $"{TripPosts.Start(scene.Trip)}overdue/{party.MemberId}/");
}
