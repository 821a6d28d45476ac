namespace CrewBot.Chat.Commands;

/// <summary>Sorts out what somebody ran together: "24ft negative" where only a depth is asked for.</summary>
internal static class RunTogether
{
    /// <summary>
    /// What to send instead of a text that an option can't read: its two parts, each with the name of its option. Null when
    /// it is no two things.
    /// </summary>
    public static string? Parted(CommandOption option, string text, CommandInfo info, IReadOnlyDictionary<string, string> written, Caller caller)
    {
        var words = text.Split(' ', StringSplitOptions.RemoveEmptyEntries);
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

    /// <summary>
    /// The other option that a text is for which a command's first option can't read, with its name: "5" of a list is how
    /// many, "water Loon Basin" a water. Null when it is for none.
    /// </summary>
    public static string? MeantOtherwise(CommandOption option, string text, CommandInfo info, IReadOnlyDictionary<string, string> written, Caller caller) =>
        option == info.Options[0] && !option.IsRequired ? Named(text.Split(' ', StringSplitOptions.RemoveEmptyEntries), info, written, caller) : null;

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
