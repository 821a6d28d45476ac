namespace CrewBot.Core.Knowledge;

/// <summary>How words are compared when a record is looked for.</summary>
public static class RecordSet
{
    /// <summary>Lower case, one space between parts, no hyphen or apostrophe.</summary>
    public static string Plain(string word) =>
        string.Join(' ', word.ToLowerInvariant().Replace("'", "", StringComparison.Ordinal)
            .Split([' ', '-', '_', '\t'], StringSplitOptions.RemoveEmptyEntries));
}
