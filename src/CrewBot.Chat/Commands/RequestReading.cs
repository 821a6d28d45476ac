namespace CrewBot.Chat.Commands;

/// <summary>Reads the options of a call as the command declares them.</summary>
internal static class RequestReading
{
    /// <summary>Reads every option.</summary>
    /// <returns>The request, or the first fault in a line.</returns>
    public static Reading<Request> Read(CommandCall call, CommandInfo info)
    {
        var expansion = Expand(call, info, out var written);
        var values = new Dictionary<string, object>(written.Count);
        foreach (var option in info.Options)
        {
            if (!written.TryGetValue(option.Name, out var text))
            {
                if (option.IsRequired)
                {
                    return new Misread(Missing(option, expansion));
                }

                continue;
            }

            if (FaultOf(option, text) is { } unfit)
            {
                return new Misread(unfit);
            }

            var reading = option.ReadAny(text.Trim(), call.Caller);
            if (reading.Fault is { } fault)
            {
                return new Misread(fault);
            }

            values[option.Name] = reading.Value!;
        }

        foreach (var (name, _) in written)
        {
            if (info.Options.All(option => option.Name != name))
            {
                return new Misread($"/{info.Path} has no option {Quoting.Quote(name)}.");
            }
        }

        if (expansion is not null && Clash(call, expansion) is { } twice)
        {
            return new Misread($"{twice} is given twice: keep one.");
        }

        return new Request(call with { Options = written }, info, values, expansion);
    }

    /// <summary>
    /// The options as far as they are understood, the words of a shorthand left out, when one that is required is missing or
    /// unfit; null when none is.
    /// </summary>
    public static IReadOnlyDictionary<string, string>? FindShortfall(CommandCall call, CommandInfo info)
    {
        Expand(call, info, out var written);
        return info.Options.Any(option => option.IsRequired
            && (!written.TryGetValue(option.Name, out var text) || option.ReadAny(text.Trim(), call.Caller).Fault is not null))
                ? written.Where(option => option.Key != info.Shorthand?.Words.Name).ToDictionary()
                : null;
    }

    private static Expansion? Expand(CommandCall call, CommandInfo info, out IReadOnlyDictionary<string, string> written)
    {
        var expansion = info.Shorthand is { } shorthand
            && call.Options.TryGetValue(shorthand.Words.Name, out var words)
            && FaultOf(shorthand.Words, words) is null
                ? shorthand.Expand(words, call.Caller)
                : null;
        if (expansion is null && call.Given.Count == 0)
        {
            written = call.Options;
            return null;
        }

        var all = new Dictionary<string, string>(call.Options);
        foreach (var (name, text) in (expansion?.Options ?? []).Concat(call.Given))
        {
            all.TryAdd(name, text);
        }

        written = all;
        return expansion;
    }

    private static string? Clash(CommandCall call, Expansion expansion) => expansion.Options
        .Select(option => option.Key)
        .GroupBy(name => name)
        .FirstOrDefault(said => said.Count() > 1 || call.Options.ContainsKey(said.Key))?.Key;

    private static string Missing(CommandOption option, Expansion? expansion) =>
        expansion is { NotUnderstood: [_, ..] words }
            ? $"No {option.Name} in that: {string.Join(", ", words.Take(3).Select(Quoting.Quote))} not understood. Give {option.Accepts}."
            : $"{option.Name} is missing. Give {option.Accepts}.";

    private static string? FaultOf(CommandOption option, string text)
    {
        if (string.IsNullOrWhiteSpace(text))
        {
            return $"{option.Name} is empty. Give {option.Accepts}.";
        }

        if (text.Length > option.MostCharacters)
        {
            return $"{option.Name}: {text.Length} characters is too long.";
        }

        return Quoting.HoldsControl(text) ? $"{option.Name}: there is a control character in that; type it again without." : null;
    }
}
