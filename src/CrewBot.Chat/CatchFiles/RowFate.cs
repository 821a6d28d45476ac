namespace CrewBot.Chat.CatchFiles;

/// <summary>What an import does with a row.</summary>
/// <param name="Line">The line of the file where it starts.</param>
/// <param name="Fish">The fish; null for a row that can't be read.</param>
/// <param name="Refusal">Why it is left out, in a line; null when it is not.</param>
/// <param name="IsKnown">The log has it already.</param>
internal sealed record RowFate(int Line, FileCatch? Fish, string? Refusal, bool IsKnown)
{
    /// <summary>What is odd with it, though it may be right; null when nothing is.</summary>
    public string? Oddity { get; init; }

    public bool IsNew => Refusal is null && !IsKnown;

    public static RowFate Refused(int line, string why) => new(line, null, why, IsKnown: false);
}
