using CrewBot.Chat.Commands;
using CrewBot.Chat.Ice;
using CrewBot.Chat.Quantities;
using CrewBot.Chat.Rigs;
using CrewBot.Core.Rigs;
using CrewBot.Storage.Ice;
using CrewBot.Storage.Trips;
using UnitsNet;

namespace CrewBot.Chat.Trips;

/// <summary>What one person needs to know without a signal, on one screen.</summary>
internal static class PocketCard
{
    /// <summary>How the lines begin that are bad news.</summary>
    public const string BadIce = "BAD ICE";
    public const string Missing = "Missing";

    private static readonly Temperature UnderIce = Temperature.FromDegreesCelsius(4);
    private static readonly Length UsualHole = Length.FromInches(8);

    public static Reply Of(TripScene scene, TripParty party, Request request, RigPlanner planner)
    {
        var trip = scene.Trip;
        var zone = request.Caller.Zone;
        var show = scene.Contacts.ShowingFor(party.MemberId, request.Units);
        var missing = string.Join(", ", scene.Missing.Where(need => need.Rule.IsSafety).Select(TripCard.Missing));
        return new Reply
        {
            Headline = $"Pocket card: {scene.Water}, {DayTime.Show(trip.MeetAt, zone)}{(trip.Place is { } place ? $", {place}" : "")}",
            Lines =
            [
                $"{TurnBack(scene, zone)}.",
                $"With you: {Brought(scene, party)}{Seat(scene, party)}.",
                .. missing.Length == 0 ? [] : (string[])[$"{Missing}: {missing}. Nobody brings them: do not go out without."],
                .. Rig(scene, planner, show),
                Ice(scene, request, show),

                // Steps as rescue services teach them. Common practice.
                "Through the ice: turn to where you came from, picks into the edge, kick flat, pull out, roll away, do not stand up. Get dry and warm at once.",
                $"Somebody else in: call {scene.Contacts.EmergencyNumber}, lie down, reach or throw a rope from afar. Do not walk up to the hole.",
                $"Emergency: {scene.Contacts.EmergencyNumber}. Say: {scene.Water}{(trip.Place is { } meet ? $", {meet}" : "")}, how many, what happened.",
            ],
            Cautions = ["No ice is safe ice. Turn back at the first doubt."],
            Actions = [new ReplyAction("Picture", ActionKind.Picture, "trip pack", TripCard.Options(scene))],
        };
    }

    // The hour, not the age: a card in a pocket does not know how late it is.
    private static string Ice(TripScene scene, Request request, Showing show)
    {
        var units = show == Showing.In(CrewUnits.Customary) ? CrewUnits.Customary : CrewUnits.Metric;
        var zone = request.Caller.Zone;
        string Of(FiledIce filed) =>
            $"{filed.Entry.Spot ?? "no spot named"}, {IceSheet.Found(filed, scene.Water, units)}, by {IceSheet.Source(filed)}, {DayTime.Show(filed.Entry.MeasuredAt ?? filed.Entry.FiledAt, zone)}";
        string OfPartner(FiledIce filed) =>
            $"{filed.Entry.Spot ?? "somewhere, a partner crew does not share the spot"}, {IceWords.Against(filed.Entry.Page.Hazards)}, by {IceSheet.Source(filed)}, {DayTime.Show(filed.Entry.MeasuredAt ?? filed.Entry.FiledAt, zone)}";
        var bad = string.Join("; ", scene.Ice.Open.Take(2).Select(Of).Concat(scene.Ice.Partners.Take(1).Select(OfPartner)));
        var newest = scene.Ice.Today.FirstOrDefault(filed => scene.Ice.Open.All(one => one.Number != filed.Number));
        var fresh = newest is null
            ? $"{(bad.Length > 0 ? "No other" : "the board has no")} fresh measurement. Measure on the way out and where you stand."
            : $"{(bad.Length > 0 ? "Elsewhere: " : "")}{Of(newest)}. Metres away or a day later it says nothing: measure where you stand.";
        return bad.Length > 0 ? $"{BadIce}: {bad}. {fresh}" : $"Ice: {fresh}";
    }

    private static string TurnBack(TripScene scene, TimeZoneInfo zone)
    {
        var until = scene.Trip.ReturnAt;
        var dusk = TripLight.Of(scene, until, zone)?.Twilight.Down;
        return $"Lines up {DayTime.Hour(until - TripRules.WayBack, zone)}, off the ice {TripCard.Until(scene.Trip, zone)}"
            + (dusk is { } dark ? $"; dark from {DayTime.Hour(dark, zone)}{(dark < until ? ": bring lights" : "")}" : "");
    }

    private static string Brought(TripScene scene, TripParty party)
    {
        var items = scene.Items.Where(item => item.MemberId == party.MemberId).Select(item => TripWords.Count(item.Count, scene.GearOf(item).Name)).ToList();
        return items.Count == 0 ? "nothing on the list; /trip bring" : string.Join(", ", items);
    }

    private static string Seat(TripScene scene, TripParty party) =>
        scene.SeatOf(party) is { } shelter ? $"; you sit in {shelter}" : "";

    private static IEnumerable<string> Rig(TripScene scene, RigPlanner planner, Showing show)
    {
        if (scene.Trip.Species is not { } key || !scene.Knowledge.Species.Has(key))
        {
            return [];
        }

        var species = scene.Knowledge.Species[key];
        var planning = planner.Plan(new RigAsk
        {
            Species = species,
            Depth = scene.Trip.Depth?.Length ?? species.Depth.Usual,
            Water = UnderIce,
            Hole = UsualHole,
            Rules = scene.Rules,
        });
        return planning.Plan is { } plan
            ? [$"{RigWords.Sentence(species.Name)}: {string.Join("; or ", plan.Alternatives.Take(1).Prepend(plan.First).Select(rig => RigWords.Brief(rig, show)))}."]
            : [];
    }
}
