using System.Globalization;
using CrewBot.Chat.Commands;

namespace CrewBot.Worker.Configuration;

/// <summary>Reads the texts of the process's arguments.</summary>
internal static class ArgumentText
{
    private const int LongestName = 64;

    // An instant without its offset would be guessed at.
    private static readonly string[] Instants =
    [
        "yyyy-MM-dd'T'HH:mmK", "yyyy-MM-dd'T'HH:mm:ssK", "yyyy-MM-dd'T'HH:mm:ss.FFFFFFFK",
        "yyyy-MM-dd HH:mmK", "yyyy-MM-dd HH:mm:ssK",
    ];

    /// <exception cref="FormatException">The name is empty, too long or holds control characters.</exception>
    public static string Name(string option, string text) =>
        text.Trim() is { Length: > 0 and <= LongestName } name && !name.Any(char.IsControl)
            ? name
            : throw new FormatException($"{option} takes 1 to {LongestName} plain characters.");

    /// <exception cref="FormatException">There is no such role.</exception>
    public static Role Role(string text) => text.ToLowerInvariant() switch
    {
        "owner" => Chat.Commands.Role.Owner,
        "steward" => Chat.Commands.Role.Steward,
        "member" => Chat.Commands.Role.Member,
        _ => throw new FormatException($"--role {Quoting.Quote(text)} is none of owner, steward, member."),
    };

    /// <exception cref="FormatException">It is not an instant of this century or the next, or lacks its offset from UTC.</exception>
    public static DateTimeOffset Instant(string option, string text) =>
        text.Length > 10
        && (text.EndsWith('Z') || text[10..].IndexOfAny(['+', '-']) > 0)
        && DateTimeOffset.TryParseExact(text, Instants, CultureInfo.InvariantCulture, DateTimeStyles.None, out var instant)
        && instant.UtcDateTime.Year is >= 2000 and < 2200
            ? instant
            : throw new FormatException(
                $"{option} {Quoting.Quote(text)} is no instant from 2000 to 2199 with its offset, such as 2026-01-17T07:30-06:00 or 2026-01-17T13:30Z.");
}
