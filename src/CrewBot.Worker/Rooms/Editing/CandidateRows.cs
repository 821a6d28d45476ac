using Spectre.Console.Rendering;

namespace CrewBot.Worker.Rooms.Editing;

/// <summary>Sets candidates in columns.</summary>
internal static class CandidateRows
{
    private const int MostRows = 8;
    private const int Gap = 2;

    /// <summary>Rows of candidates, in reading order, none wider than the terminal.</summary>
    public static IEnumerable<string> Of(IReadOnlyList<string> candidates, int width)
    {
        var column = candidates.Max(WidthOf) + Gap;
        var columns = Math.Max(1, (width - 1) / column);
        var rows = candidates.Chunk(columns).ToList();
        foreach (var row in rows.Take(MostRows))
        {
            yield return string.Concat(row.Select(candidate => candidate + new string(' ', column - WidthOf(candidate)))).TrimEnd();
        }

        if (rows.Count > MostRows)
        {
            yield return $"and {rows.Skip(MostRows).Sum(row => row.Length)} more: write another letter.";
        }
    }

    private static int WidthOf(string text) => new Segment(text).CellCount();
}
