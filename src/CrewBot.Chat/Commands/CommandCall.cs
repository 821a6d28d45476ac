using System.Collections.ObjectModel;

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
    /// <summary>Where it was given, a place that posts can go to: a channel, or the terminal's own word; null where there is none.</summary>
    public string? Place { get; init; }

    /// <summary>Given in a direct message. The caller's crew is then the one that they belong to, as far as that is known.</summary>
    public bool IsDirect { get; init; }

    /// <summary>Options that the circumstances give, such as the time of a message: they give way to what the person says.</summary>
    public IReadOnlyDictionary<string, string> Given { get; init; } = ReadOnlyDictionary<string, string>.Empty;

    /// <summary>Opens the files that the options name.</summary>
    public IGivenFiles Files { get; init; } = NoFiles.Instance;
}
