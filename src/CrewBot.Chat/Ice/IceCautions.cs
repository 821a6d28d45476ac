namespace CrewBot.Chat.Ice;

/// <summary>What every reply about ice ends with.</summary>
internal static class IceCautions
{
    public const string Check = "No ice is safe ice. This is what was reported, not a clearance: conditions differ within metres, so measure it yourself where you stand.";

    public const string Authority = "Local officers and authorities have the last word.";

    public const string StayOff = "Stay off, and tell others.";

    public const string Vehicle = "Best left ashore: some authorities advise against driving on ice at any thickness.";

    public const string Crowd = "Set shelters well apart and do not crowd round one hole. If water comes up in a hole, leave at once.";

    public static IReadOnlyList<string> Of(bool isBad) => isBad ? [StayOff, Check, Authority] : [Check, Authority];
}
