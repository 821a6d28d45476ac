namespace CrewBot.Chat.Commands;

/// <summary>Writes names one after the other: "Loon Basin, Mill Pond and Tamarack Bay".</summary>
internal static class Listing
{
    /// <param name="names">One or more.</param>
    /// <param name="most">How many are named; the others are counted.</param>
    public static string Of(IReadOnlyList<string> names, int most = 5) => names switch
    {
        [var only] => only,
        _ when names.Count > most => $"{string.Join(", ", names.Take(most))} and {names.Count - most} more",
        _ => $"{string.Join(", ", names.SkipLast(1))} and {names[^1]}",
    };
}
