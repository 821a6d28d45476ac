namespace CrewBot.Drawing.Charts;

/// <summary>Round steps for an axis of values: 1, 2 or 5 times a power of ten.</summary>
internal static class Steps
{
    /// <summary>The smallest round step that divides the range into no more than so many.</summary>
    public static double For(double most, int count)
    {
        var rough = Math.Max(most, 1e-9) / count;
        var power = Math.Pow(10, Math.Floor(Math.Log10(rough)));
        var share = rough / power;
        return power * (share <= 1 ? 1 : share <= 2 ? 2 : share <= 5 ? 5 : 10);
    }

    /// <summary>0 and every step up to a value or just past it.</summary>
    public static IReadOnlyList<double> Through(double most, int count)
    {
        most = most > 0.001 ? most : 1; // an axis has a length even where everything is nothing
        var step = For(most, count);
        return [.. Enumerable.Range(0, (int)Math.Ceiling((most / step) - 1e-9) + 1).Select(number => number * step)];
    }
}
