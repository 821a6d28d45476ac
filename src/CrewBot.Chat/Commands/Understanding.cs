using CrewBot.Chat.Quantities;

namespace CrewBot.Chat.Commands;

/// <summary>Tells the asker what their words were read as and what was assumed, so that nothing is guessed in silence.</summary>
internal static class Understanding
{
    // A whole message may have been read.
    private const int MostNamed = 8;

    public static IEnumerable<string> Of(Request request, IReadOnlyList<string> assumed)
    {
        var parts = new List<string>();
        if (request.Expansion is { } expansion)
        {
            parts.Add($"Heard: {string.Join(", ", expansion.Options.Select(option => $"{option.Key} {option.Value}").Distinct())}.");
            if (expansion.NotUnderstood.Count > 0)
            {
                var more = expansion.NotUnderstood.Count > MostNamed ? ", …" : "";
                parts.Add($"Not understood: {string.Join(", ", expansion.NotUnderstood.Take(MostNamed).Select(Named))}{more}.");
            }
        }

        if (assumed.Count > 0)
        {
            parts.Add($"Assumed: {string.Join(", ", assumed)}.");
        }

        return parts.Count > 0 ? [string.Join(" ", parts)] : [];
    }

    // "walleye 24" means feet to whoever writes it, and so it is planned for another depth.
    private static string Named(string word) =>
        NumberText.Split(word) is { After: "" } ? $"{Quoting.Quote(word)} (no unit)" : Quoting.Quote(word);
}
