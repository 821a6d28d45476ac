using System.Text.RegularExpressions;

namespace CrewBot.Chat.Quantities;

/// <summary>Takes a message apart into words, as a phone and cold fingers send them.</summary>
internal static partial class SaidWords
{
    private static readonly char[] Emphasis = ['*', '_', '~', '`'];

    /// <summary>
    /// The words, without the marks around and between them. "54,5 cm" stays whole, the marks of feet and inches stay, and
    /// the minus of "- 20C" and "minus 20" goes to its number.
    /// </summary>
    public static string[] Of(string text) =>
        [.. AsWritten(LoneMinus().Replace(CurlyApostrophe().Replace(text, "'"), "-")).Select(Bare).Where(word => word is not ("" or "-" or "–" or "—"))];

    /// <summary>The words with what marks they bear, for names that are kept: "pt. 3".</summary>
    public static string[] AsWritten(string text) => [.. Between().Split(text).Where(word => word.Length > 0)];

    private static string Bare(string word)
    {
        var bare = word.Trim(Emphasis).TrimStart('"', '“', '„').TrimEnd('.', ':');
        // After a digit the mark is one of inches.
        return bare is [.., var before, '"' or '”'] && char.IsLetter(before) ? bare[..^1] : bare;
    }

    // A phone types "won’t"; behind a digit the mark is one of feet.
    [GeneratedRegex(@"(?<=\p{L})’(?=\p{L})", RegexOptions.CultureInvariant)]
    private static partial Regex CurlyApostrophe();

    // A comma between two digits is a decimal one.
    [GeneratedRegex(@"(?:[\s;!?()]|,(?!(?<=[0-9],)[0-9]))+", RegexOptions.CultureInvariant)]
    private static partial Regex Between();

    [GeneratedRegex(@"(?<=^|\s)(?:[-−–]\s+(?=[0-9]+\s?°?[CF]\b)|minus\s+(?=[0-9]))", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex LoneMinus();
}
