using System.Globalization;

namespace CrewBot.Chat.Quantities;

/// <summary>Writes how many there are: "1 entry", "3 entries".</summary>
internal static class Counted
{
    /// <param name="count">How many.</param>
    /// <param name="one">The word for one of them.</param>
    /// <param name="many">The word for more or none; without it, an s is added.</param>
    public static string Of(int count, string one, string? many = null) =>
        string.Create(CultureInfo.InvariantCulture, $"{count} {(count == 1 ? one : many ?? one + "s")}");
}
