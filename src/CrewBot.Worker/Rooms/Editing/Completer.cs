using System.Text.RegularExpressions;
using CrewBot.Chat.Commands;

namespace CrewBot.Worker.Rooms.Editing;

/// <summary>Offers commands, option names and option values for what is written so far.</summary>
internal sealed partial class Completer(CommandCatalog catalog)
{
    private const int Most = 60;

    /// <summary>Finds what could stand where the cursor stands.</summary>
    /// <param name="written">The line up to the cursor.</param>
    public Completion Complete(string written)
    {
        var help = HelpWord().Match(written);
        if (help.Success)
        {
            return Among(written, help.Length, catalog.Commands.Select(info => info.Path));
        }

        var command = FindCommand(written, out var optionsFrom);
        if (command is null)
        {
            return CompleteCommand(written);
        }

        var named = OptionName().Matches(written[optionsFrom..]).LastOrDefault();
        if (named is not null
            && command.Options.FirstOrDefault(option => option.Name.Equals(named.Groups["name"].Value, StringComparison.OrdinalIgnoreCase)) is { } option
            && CompleteValue(option, written, optionsFrom + named.Index + named.Length) is { Candidates.Count: > 0 } values)
        {
            return values;
        }

        return CompleteWord(command, written, optionsFrom);
    }

    private CommandInfo? FindCommand(string written, out int optionsFrom)
    {
        var head = Head().Match(written);
        if (head.Success && catalog.TryFind($"{head.Groups["family"].Value} {head.Groups["verb"].Value}".ToLowerInvariant(), out var handler))
        {
            optionsFrom = head.Length;
            return handler.Info;
        }

        // Words alone are read as one command; the first of them may still become a family.
        optionsFrom = 0;
        var words = written.TrimStart().Split(' ');
        return words.Length > 1 && written.TrimStart()[0] != '/' && !catalog.Families.Contains(words[0].ToLowerInvariant()) ? catalog.Bare : null;
    }

    private Completion CompleteCommand(string written)
    {
        var start = written.Length - written.TrimStart().Length;
        var begun = written[start..];
        var slash = begun.StartsWith('/') ? "/" : "";
        var paths = catalog.Commands.Select(info => slash + info.Path + ' ');
        var words = slash.Length > 0 ? [] : RoomWords.All.Select(word => word + ' ');
        var bare = begun.Length > 0 && slash.Length == 0 && !begun.Contains(' ', StringComparison.Ordinal) ? Values(catalog.Bare, begun) : [];
        return Among(written, start, paths.Concat(words).Concat(bare));
    }

    private static Completion CompleteValue(CommandOption option, string written, int from)
    {
        var start = from + written[from..].TakeWhile(character => character is '"' or ' ').Count();
        return new Completion(start, [.. option.Suggest(written[start..]).Take(Most).Select(value => value + ' ')]);
    }

    private static Completion CompleteWord(CommandInfo command, string written, int optionsFrom)
    {
        var start = Math.Max(optionsFrom, written.LastIndexOf(' ') + 1);
        var begun = written[start..];
        var given = OptionName().Matches(written[optionsFrom..]).Select(match => match.Groups["name"].Value.ToLowerInvariant()).ToHashSet();
        var names = command.Options.Where(option => !given.Contains(option.Name)).Select(option => option.Name + ':');
        var values = begun.Length > 0 && command.Shorthand is not null ? Values(command, begun) : [];
        return Among(written, start, names.Concat(values));
    }

    // A single letter would bring up half the trade.
    private static IEnumerable<string> Values(CommandInfo command, string begun) => begun.Length < 2
        ? []
        : command.Options.SelectMany(option => option.Suggest(begun))
            .Where(value => value.StartsWith(begun, StringComparison.OrdinalIgnoreCase))
            .Select(value => value + ' ');

    private static Completion Among(string written, int start, IEnumerable<string> candidates) => new(
        start,
        [
            .. candidates.Where(candidate => candidate.StartsWith(written[start..], StringComparison.OrdinalIgnoreCase))
                .Distinct(StringComparer.OrdinalIgnoreCase)
                .Take(Most),
        ]);

    [GeneratedRegex(@"^\s*/?help\s+/?", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex HelpWord();

    [GeneratedRegex(@"^\s*/?(?<family>[a-z-]+)\s+(?<verb>[a-z-]+)\s+", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture)]
    private static partial Regex Head();

    [GeneratedRegex(@"(?<=^|\s)(?<name>[a-z][a-z-]*):", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture)]
    private static partial Regex OptionName();
}
