namespace CrewBot.Chat.Commands;

/// <summary>Sorts out what somebody ran together: "24ft negative" where only a depth is asked for.</summary>
internal static class RunTogether
{
    // "/weather chill -20C 15mph cold": more words than most options are of.
    private const int ManyWords = 4;

    /// <summary>A fault of an option, with what to send instead where its text is two things, or meant for another option.</summary>
    public static string Explain(
        string fault, CommandOption option, string text, CommandInfo info, IReadOnlyDictionary<string, string> written, Caller caller)
    {
        var words = text.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        if (Parted(option, words, info, written, caller) is { } parted)
        {
            return $"{option.Name}: {Quoting.Quote(text)} is two things. Name each: {parted}";
        }

        // What it is but too much of, or in a wrong unit, is meant for this option.
        return fault.StartsWith($"{option.Name}: can't read", StringComparison.Ordinal)
            && MeantOtherwise(option, words, info, written, caller) is { } other
                ? $"{fault} If it is something else, name it: {other}"
                : HoldsMore(option, words, info, written) ? $"{fault} As in: {info.Example}" : fault;
    }

    // The two parts, each with the name of its option; null when it is no two things.
    private static string? Parted(
        CommandOption option, string[] words, CommandInfo info, IReadOnlyDictionary<string, string> written, Caller caller)
    {
        for (var cut = words.Length - 1; cut > 0; cut--)
        {
            var first = CommandText.Unquoted(string.Join(' ', words[..cut]));
            if (option.ReadAny(first, caller).Fault is null && Named(words[cut..], info, written, caller) is { } second)
            {
                return $"{CommandLine.Pair(option.Name, first)} {second}";
            }
        }

        return null;
    }

    // For a command's first option, which takes what is named nothing: "5" of a list is how many, "water Loon Basin" a water.
    private static string? MeantOtherwise(
        CommandOption option, string[] words, CommandInfo info, IReadOnlyDictionary<string, string> written, Caller caller) =>
        option == info.Options[0] && !option.IsRequired ? Named(words, info, written, caller) : null;

    // What is typed without names goes all into the first option.
    private static bool HoldsMore(CommandOption option, string[] words, CommandInfo info, IReadOnlyDictionary<string, string> written) =>
        written.Count == 1 && option == info.Options[0] && info.Shorthand is null && words.Length > 1
        && (words.Length >= ManyWords || info.Options.Any(other => other != option && other.IsRequired));

    // The rest of the words with the option that they are for: "length 23in" names it, "negative" can only be one.
    private static string? Named(string[] rest, CommandInfo info, IReadOnlyDictionary<string, string> written, Caller caller)
    {
        var free = info.Options.Where(option => !written.ContainsKey(option.Name)).ToList();
        var called = rest.Length > 1 ? free.Find(option => option.Name.Equals(rest[0], StringComparison.OrdinalIgnoreCase)) : null;
        var value = string.Join(' ', called is null ? rest : rest[1..]);
        var meant = called ?? free.Find(option => !TakesAnyWord(option, caller) && Reads(option, value, caller));
        return meant is not null && Reads(meant, value, caller) ? CommandLine.Pair(meant.Name, value) : null;
    }

    private static bool TakesAnyWord(CommandOption option, Caller caller) => Reads(option, "?", caller);

    private static bool Reads(CommandOption option, string text, Caller caller) => option.ReadAny(text, caller).Fault is null;
}
