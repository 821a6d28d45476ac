namespace CrewBot.Chat.CatchFiles;

/// <summary>
/// Keeps a spreadsheet from taking a person's words for a formula: an apostrophe goes before a text that starts like one,
/// and before one that starts with an apostrophe, so that every text comes back as it was.
/// </summary>
/// <remarks>The characters are those that the Open Worldwide Application Security Project lists under "CSV Injection".</remarks>
internal static class FormulaGuard
{
    private const char Guard = '\'';
    private const string Starts = "=+-@\t\r'";

    public static string Put(string text) => text.Length > 0 && Starts.Contains(text[0], StringComparison.Ordinal) ? Guard + text : text;

    /// <summary>Takes off what <see cref="Put"/> put on; another's apostrophe stays.</summary>
    public static string Take(string text) =>
        text.Length > 1 && text[0] == Guard && Starts.Contains(text[1], StringComparison.Ordinal) ? text[1..] : text;
}
