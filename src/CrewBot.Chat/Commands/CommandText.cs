using System.Text.RegularExpressions;

namespace CrewBot.Chat.Commands;

/// <summary>Reads a typed line as a command: <c>/rig plan species:walleye depth:24ft</c>, or bare words.</summary>
public static partial class CommandText
{
    /// <summary>No command is longer; a note may be, and has its own limit.</summary>
    public const int Longest = 1500;

    private const int MostOptionsNamed = 8;

    // Emphasis, a quotation's mark or a prompt that was copied along, another bot's sign for a command.
    private static readonly char[] BeforeCommands = ['*', '_', '`', '~', '>', '!', ' '];

    /// <summary>Reads a line.</summary>
    /// <returns>Path and options, or in one line what is wrong with it.</returns>
    public static Reading<TypedCommand> Read(string line, CommandCatalog catalog)
    {
        var text = line.Trim().TrimStart(BeforeCommands);
        if (text.Length == 0)
        {
            return new Misread($"Nothing to answer. Try {catalog.Bare.Example}");
        }

        if (text.Length > Longest)
        {
            return new Misread($"That is {text.Length} characters; a command fits in {Longest}.");
        }

        if (Quoting.HoldsControl(text))
        {
            return new Misread("There is a control character in that; type it again without.");
        }

        var words = text.TrimStart('/').Split([' ', '\t', '\n', '\r'], 3, StringSplitOptions.RemoveEmptyEntries);
        var family = words.Length > 0 ? words[0].ToLowerInvariant() : "";
        var byWord = catalog.Commands.FirstOrDefault(info => info.Word == family);
        var isPath = words.Length > 1 && catalog.TryFind($"{family} {words[1].ToLowerInvariant()}", out _);
        // "rig walleye 24ft" without a slash is the bare command, "ice Loon Basin 5in" the one of that word.
        var takesWords = words.Length > 1 && text[0] != '/' && (byWord is not null || family == catalog.Bare.Family);
        if (!isPath && !takesWords && Signpost.Find(text, catalog) is { } way)
        {
            return new Misread(way);
        }

        if (catalog.Families.Contains(family) && (isPath || !takesWords))
        {
            return ReadVerb(family, words, catalog);
        }

        if (byWord is not null)
        {
            return ReadOptions(byWord, text.TrimStart('/')[family.Length..].Trim());
        }

        return text[0] == '/'
            ? new Misread(
                $"There is no command {Quoting.Quote('/' + family)}. {Nearest.Offer('/' + family, catalog.Families.Select(known => '/' + known), 3, $"There is {string.Join(", ", catalog.Families.Select(known => '/' + known))}.")}")
            : ReadOptions(catalog.Bare, text);
    }

    private static Reading<TypedCommand> ReadVerb(string family, string[] words, CommandCatalog catalog)
    {
        var verbs = catalog.Commands.Where(info => info.Family == family).Select(info => info.Verb).ToList();
        if (words.Length == 1)
        {
            return new Misread($"/{family} needs one of: {string.Join(", ", verbs)}.");
        }

        var verb = words[1].ToLowerInvariant();
        return catalog.TryFind($"{family} {verb}", out var handler)
            ? ReadOptions(handler.Info, words.Length > 2 ? words[2] : "")
            : new Misread(
                $"There is no /{family} {Quoting.Quote(verb)}. {(Nearest.Near(verb, verbs) is [var near, ..] ? $"Nearest: /{family} {near}; there are" : "There are")} {string.Join(", ", verbs)}.");
    }

    private static Reading<TypedCommand> ReadOptions(CommandInfo info, string text)
    {
        var options = new Dictionary<string, string>();
        var names = OptionStart().Matches(text).Where(match => !IsInQuotes(text, match.Index) && !IsWord(info, text, match)).ToList();
        var before = text[..(names.Count > 0 ? names[0].Index : text.Length)].Trim();
        if (before.Length > 0)
        {
            // What stands before any name is the shorthand or, without one, the first option: "/ice board Loon Basin".
            options[info.Shorthand?.Words.Name ?? info.Options[0].Name] = Unquoted(before);
        }

        for (var i = 0; i < names.Count; i++)
        {
            var name = names[i].Groups["name"].Value.ToLowerInvariant();
            var from = names[i].Index + names[i].Length;
            var value = Unquoted(text[from..(i + 1 < names.Count ? names[i + 1].Index : text.Length)].Trim());
            if (FaultOf(info, name, value, options) is { } fault)
            {
                return new Misread(fault);
            }

            options[name] = value;
        }

        return new TypedCommand(info.Path, options);
    }

    private static string? FaultOf(CommandInfo info, string name, string value, Dictionary<string, string> options)
    {
        var known = info.Options.Select(option => option.Name).ToList();
        if (!known.Contains(name))
        {
            return $"/{info.Path} has no option {Quoting.Quote(name)}. {Nearest.Offer(name, known, 2, $"It takes {Listing.Of(known, MostOptionsNamed)}.")}";
        }

        if (options.ContainsKey(name))
        {
            return $"{name} is given twice: keep one.";
        }

        return value.Length == 0
            ? $"{name} is empty. Give {info.Options.First(option => option.Name == name).Accepts}."
            : null;
    }

    // "log walleye: 22in" is what people write in words; "lenght:22in" is an option that is to be named as wrong.
    private static bool IsWord(CommandInfo info, string text, Match name) =>
        info.Shorthand is not null
        && (name.Index + name.Length == text.Length || char.IsWhiteSpace(text[name.Index + name.Length]))
        && !info.Options.Any(option => option.Name.Equals(name.Groups["name"].Value, StringComparison.OrdinalIgnoreCase));

    // A colon inside quotation marks belongs to the text.
    private static bool IsInQuotes(string text, int index)
    {
        for (var at = 0; at < index; at++)
        {
            if ((at == 0 || text[at - 1] == ':') && ClosingOf(text[at]) != '\0')
            {
                var end = EndOfQuotes(text, at);
                if (end >= index)
                {
                    return true;
                }

                at = end;
            }
        }

        return false;
    }

    // Where the quotation that starts here ends, or the text's length; a doubled mark is one that belongs to the text.
    private static int EndOfQuotes(string text, int start)
    {
        var closing = ClosingOf(text[start]);
        for (var at = start + 1; at < text.Length; at++)
        {
            if (text[at] != closing)
            {
                continue;
            }

            if (closing == '"' && at + 1 < text.Length && text[at + 1] == '"')
            {
                at++;
                continue;
            }

            return at;
        }

        return text.Length;
    }

    private static char ClosingOf(char opening) => opening switch
    {
        '"' => '"',
        '“' => '”',
        _ => '\0',
    };

    /// <summary>The text without the quotation marks around all of it.</summary>
    internal static string Unquoted(string value) =>
        value.Length > 1 && ClosingOf(value[0]) != '\0' && EndOfQuotes(value, 0) == value.Length - 1
            ? (value[0] == '"' ? value[1..^1].Replace("\"\"", "\"", StringComparison.Ordinal) : value[1..^1]).Trim()
            : value;

    [GeneratedRegex(@"(?<=^|\s)(?<name>[A-Za-z][A-Za-z-]*):(?!//)", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture)]
    private static partial Regex OptionStart();
}
