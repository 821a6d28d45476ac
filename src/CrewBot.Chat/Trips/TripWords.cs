using System.Text.Json;
using CrewBot.Core.Knowledge;

namespace CrewBot.Chat.Trips;

/// <summary>How trips speak of things.</summary>
internal static class TripWords
{
    public const string Emergency = "In danger: call the local emergency number. The bot calls nobody.";

    public static string Of(GearFamily family) => JsonNamingPolicy.KebabCaseLower.ConvertName(family.ToString());

    /// <summary>"1 seat", "3 seats", "2 people".</summary>
    public static string Count(int number, string noun) => number == 1
        ? $"1 {(noun == "people" ? "person" : noun)}"
        : $"{number} {(noun is "people" or "children" || noun.EndsWith('s') ? noun : noun + "s")}";
}
