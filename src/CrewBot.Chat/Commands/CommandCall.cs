namespace CrewBot.Chat.Commands;

/// <summary>A command as a platform delivers it, its options not yet read.</summary>
/// <param name="Id">The platform's id of the request: the same when it is delivered again.</param>
/// <param name="At">When it was sent; relative times count from here.</param>
/// <param name="Caller">Who asks.</param>
/// <param name="Path">Family and verb: <c>rig plan</c>.</param>
/// <param name="Options">Option names and what was written for them.</param>
public sealed record CommandCall(
    string Id, DateTimeOffset At, Caller Caller, string Path, IReadOnlyDictionary<string, string> Options)
{
    /// <summary>Opens the files that the options name.</summary>
    public IGivenFiles Files { get; init; } = NoFiles.Instance;
}
