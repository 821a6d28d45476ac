namespace CrewBot.Worker.Rooms.Editing;

/// <summary>The lines given so far, oldest first, each once.</summary>
internal sealed class History
{
    private const int Longest = 500;

    private readonly List<string> _lines = [];

    /// <param name="lines">What is remembered from before, oldest first.</param>
    public History(IEnumerable<string> lines)
    {
        foreach (var line in lines)
        {
            Add(line);
        }
    }

    public IReadOnlyList<string> Lines => _lines;

    /// <summary>Remembers a line as the latest; an earlier one like it, and what is more than 500 lines ago, is forgotten.</summary>
    public void Add(string line)
    {
        if (string.IsNullOrWhiteSpace(line))
        {
            return;
        }

        _lines.Remove(line);
        _lines.Add(line);
        if (_lines.Count > Longest)
        {
            _lines.RemoveAt(0);
        }
    }

    /// <summary>The next line back that starts with a text; -1 when there is none.</summary>
    /// <param name="prefix">What was written before looking back.</param>
    /// <param name="before">The place to look back from; the count of lines to start at the latest.</param>
    public int FindBefore(string prefix, int before) =>
        before <= 0 ? -1 : _lines.FindLastIndex(before - 1, line => line.StartsWith(prefix, StringComparison.OrdinalIgnoreCase));

    /// <summary>The next line forward that starts with a text; -1 when there is none.</summary>
    public int FindAfter(string prefix, int after) =>
        after + 1 >= _lines.Count ? -1 : _lines.FindIndex(after + 1, line => line.StartsWith(prefix, StringComparison.OrdinalIgnoreCase));
}
