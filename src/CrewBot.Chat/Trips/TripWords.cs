using System.Text.Json;
using CrewBot.Chat.Commands;
using CrewBot.Chat.Quantities;
using CrewBot.Core.Knowledge;

namespace CrewBot.Chat.Trips;

/// <summary>How trips speak of things.</summary>
internal static class TripWords
{
    /// <summary>Who learns that a party is overdue: "the crew is told".</summary>
    public static string WhoIsTold(TripContacts contacts) => (contacts.Room, contacts.Contact ?? contacts.Crew.ContactRole) switch
    {
        (null, null) => "NOBODY is told until /crew setup for:trips names a channel",
        (_, null) => "the crew is told",
        (null, _) => "its contacts are told",
        _ => "the crew and its contacts are told",
    };

    /// <summary>By whose clock times are read, while the crew has set none: an alert by another clock comes hours too late.</summary>
    public static IEnumerable<string> UnsetClock(TripContacts contacts, Request request) => contacts.Crew.Zone is null
        ? [$"Times are {request.Caller.Zone.Id}'s: the crew has set no time zone. Its owner does with /crew setup zone:America/Winnipeg"]
        : [];

    /// <summary>What to do first of all, said to somebody who does not come.</summary>
    public static string NotOn(TripScene scene, Request request) =>
        $"You are not on trip {scene.Trip.Number} ({scene.Water}, {DayTime.Show(scene.Trip.MeetAt, request.Caller.Zone)}): /trip join trip:{scene.Trip.Number} answer:in first.";

    public static string Of(GearFamily family) => JsonNamingPolicy.KebabCaseLower.ConvertName(family.ToString());

    /// <summary>"1 seat", "3 seats", "2 people", "2 children", "2 pairs of ice picks".</summary>
    public static string Count(int number, string noun) => noun switch
    {
        "people" => Counted.Of(number, "person", "people"),
        "child" => Counted.Of(number, "child", "children"),
        "ice picks" => $"{Counted.Of(number, "pair")} of ice picks",
        _ when noun.EndsWith('s') => Counted.Of(number, noun, noun),
        _ => Counted.Of(number, noun),
    };
}
