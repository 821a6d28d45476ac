using System.Text.Json;
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

    public static string Of(GearFamily family) => JsonNamingPolicy.KebabCaseLower.ConvertName(family.ToString());

    /// <summary>"1 seat", "3 seats", "2 people", "2 children".</summary>
    public static string Count(int number, string noun) => noun switch
    {
        "people" => Counted.Of(number, "person", "people"),
        "child" => Counted.Of(number, "child", "children"),
        _ when noun.EndsWith('s') => Counted.Of(number, noun, noun),
        _ => Counted.Of(number, noun),
    };
}
