namespace CrewBot.Drawing.Charts;

/// <summary>Moves labels apart that would lie on each other, each as little as the ones before it allow.</summary>
internal static class Spread
{
    /// <summary>Places labels of one height under each other.</summary>
    /// <param name="wanted">Where the top of each would be, in order from above.</param>
    /// <param name="height">The height of each.</param>
    /// <param name="from">No top is above this.</param>
    /// <param name="to">No label ends below this, if all fit.</param>
    public static IReadOnlyList<float> Tops(IReadOnlyList<float> wanted, float height, float from, float to)
    {
        var tops = wanted.ToArray();
        var free = from;
        for (var index = 0; index < tops.Length; index++)
        {
            tops[index] = Math.Max(tops[index], free);
            free = tops[index] + height;
        }

        free = Math.Max(to, from + (tops.Length * height)) - height;
        for (var index = tops.Length - 1; index >= 0; index--)
        {
            tops[index] = Math.Min(tops[index], free);
            free = tops[index] - height;
        }

        return tops;
    }
}
