namespace CrewBot.Chat.Commands;

/// <summary>Reads the options of a call as the command declares them.</summary>
internal static class RequestReading
{
    // "trout" is part of several names, "at" of too many.
    private const int ShortestPart = 3;
    private const int MostOffered = 5;

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
                if (option.IsRequired && (option != info.Found || expansion is { NotUnderstood.Count: > 0 }))
                {
                    return new Misread(Missing(option, expansion, call.Caller));
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
                return new Misread(RunTogether.Explain(fault, option, text.Trim(), info, written, call.Caller));
            }

            values[option.Name] = reading.Value!;
        }

        if (values.Count < written.Count)
        {
            var unknown = written.Keys.First(name => !values.ContainsKey(name));
            return new Misread($"/{info.Path} has no option {Quoting.Quote(unknown)}.");
        }

        if (expansion is not null && Clash(call, expansion) is { } twice)
        {
            return new Misread(twice);
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
                ? Fitting(shorthand.Expand(words, call.Caller, call.Options.Keys.Concat(call.Given.Keys)), info)
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

    // One shorthand serves several commands: what this one does not take is named, as other words without a place are.
    private static Expansion Fitting(Expansion said, CommandInfo info)
    {
        var fits = said.Options.ToLookup(heard => info.Options.Any(option => option.Name == heard.Key));
        return new Expansion([.. fits[true]], [.. said.NotUnderstood, .. fits[false].Select(heard => $"{heard.Key} {heard.Value}")]);
    }

    // The same said twice is no clash: "northern pike, jack".
    private static string? Clash(CommandCall call, Expansion expansion)
    {
        foreach (var said in expansion.Options.GroupBy(option => option.Key, option => option.Value))
        {
            var values = said.Distinct().ToList();
            if (values.Count > 1)
            {
                return $"{said.Key} is given {(values.Count == 2 ? "twice" : $"{values.Count} times")}, {Listing.Of(values)}: keep one.";
            }

            if (call.Options.ContainsKey(said.Key))
            {
                return $"{said.Key} is given twice: keep one.";
            }
        }

        return null;
    }

    /// <summary>What to say of a required option that is missing.</summary>
    public static string Missing(CommandOption option, Expansion? expansion, Caller caller)
    {
        if (expansion is not { NotUnderstood: [_, ..] words })
        {
            return $"{option.Name} is missing. Give {option.AcceptedFrom(caller)}.";
        }

        foreach (var word in words.Where(word => word.Length >= ShortestPart))
        {
            if (option.Suggest(word, caller).Take(MostOffered).ToList() is [_, ..] meant)
            {
                return $"No {option.Name} in that: {Quoting.Quote(word)} may be {string.Join(", ", meant)}. {(meant.Count == 1 ? "Send it again with that" : "Say which")}.";
            }
        }

        return $"No {option.Name} in that: {string.Join(", ", words.Take(3).Select(Quoting.Quote))} not understood. Give {option.AcceptedFrom(caller)}.";
    }

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
