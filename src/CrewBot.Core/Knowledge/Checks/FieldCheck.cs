namespace CrewBot.Core.Knowledge.Checks;

/// <summary>What several kinds of record ask of a field.</summary>
internal static class FieldCheck
{
    /// <summary>The longest sentence that still fits a phone beside the rest of a reply.</summary>
    public const int Sentence = 110;

    /// <summary>Says something, in one line, and not too much.</summary>
    public static IEnumerable<Misfit> Text(string field, string text, int longest)
    {
        if (string.IsNullOrWhiteSpace(text))
        {
            yield return new(field, "It is blank: write it out.");
        }
        else if (text.Length > longest)
        {
            yield return new(field, $"It is {text.Length} characters long: cut it to {longest}.");
        }

        if (text.Any(char.IsControl))
        {
            yield return new(field, "It holds a line break or another control character: write it as one plain line.");
        }
    }

    /// <summary>A list of keys, each known and none twice.</summary>
    public static IEnumerable<Misfit> Keys<T>(string field, IReadOnlyList<string> keys, RecordSet<T> known, string kind)
        where T : TradeRecord
    {
        if (keys.Count == 0)
        {
            yield return new(field, $"The list is empty: name at least one {kind}.");
        }

        foreach (var key in keys.Where(key => !known.Has(key)).Distinct())
        {
            yield return new(field, Unknown(kind, key));
        }

        foreach (var twice in keys.GroupBy(key => key).Where(same => same.Skip(1).Any()))
        {
            yield return new(field, $"'{twice.Key}' stands twice in the list: keep one.");
        }
    }

    /// <summary>A spread that lies within bounds, the low end not above the high one.</summary>
    public static IEnumerable<Misfit> Between(string field, Spread<double> spread, double least, double most)
    {
        if (!(spread.Low >= least && spread.High <= most && spread.Low <= spread.High))
        {
            yield return new(
                field, FormattableString.Invariant($"Low must not exceed high, and both lie from {least} to {most}."));
        }
    }

    /// <summary>A share: more than nothing, at most the whole.</summary>
    public static IEnumerable<Misfit> Share(string field, Spread<double> spread)
    {
        if (!(spread.Low > 0 && spread.Low <= spread.High && spread.High <= 1))
        {
            yield return new(field, "Low must not exceed high, and both lie above 0 and up to 1 (0.8 is 80 per cent).");
        }
    }

    /// <summary>No other record of the section is the same thing.</summary>
    public static IEnumerable<Misfit> Alone<T>(
        T record, RecordSet<T> section, string field, string sameness, Func<T, bool> isSame)
        where T : TradeRecord => section
            .Where(other => other.Key != record.Key && isSame(other))
            .Select(other => new Misfit(field, $"{other.Key} is {sameness} already: change that record instead.", other.Key));

    /// <summary>The remedy for a key that nothing answers to.</summary>
    public static string Unknown(string kind, string key) =>
        $"There is no {kind} '{key}': check its spelling or add it.";

    /// <summary>Does each value exceed the one before?</summary>
    public static bool Climbs(params IEnumerable<double> values) =>
        InOrder(values, (below, above) => below < above);

    /// <summary>Does no value fall below the one before?</summary>
    public static bool NeverFalls(params IEnumerable<double> values) =>
        InOrder(values, (below, above) => below <= above);

    private static bool InOrder(IEnumerable<double> values, Func<double, double, bool> fits) =>
        values.Zip(values.Skip(1), fits).All(fit => fit);
}
