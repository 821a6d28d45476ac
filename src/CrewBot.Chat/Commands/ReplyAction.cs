using System.Text.Json.Serialization;

namespace CrewBot.Chat.Commands;

/// <summary>A button under a reply, or one of the choices of a list: the command it stands for and what becomes of it.</summary>
public sealed record ReplyAction
{
    /// <summary>The most fields that a form can have on every platform.</summary>
    public const int MostFields = 5;

    /// <param name="label">What stands on it.</param>
    /// <param name="kind">What pressing it does.</param>
    /// <param name="path">The command it stands for: <c>rig plan</c>.</param>
    /// <param name="options">Option names and texts; none by default.</param>
    public ReplyAction(string label, ActionKind kind, string path, IReadOnlyDictionary<string, string>? options = null) =>
        (Label, Kind, Path, Options) = (label, kind, path, options ?? new Dictionary<string, string>());

    // A reply that is kept as JSON names its commands the way a person would type them.
    [JsonConstructor]
    internal ReplyAction(string label, ActionKind kind, string command, IReadOnlyList<string>? fields)
    {
        (Label, Kind, Fields) = (label, kind, fields ?? []);
        (Path, Options) = CommandLine.Read(command);
    }

    /// <summary>What stands on it.</summary>
    public string Label { get; }

    /// <summary>What pressing it does.</summary>
    public ActionKind Kind { get; }

    /// <summary>The command it stands for.</summary>
    [JsonIgnore]
    public string Path { get; }

    /// <summary>Option names and texts of that command; in a form they are what its fields hold at first.</summary>
    [JsonIgnore]
    public IReadOnlyDictionary<string, string> Options { get; }

    /// <summary>The whole command as a person would type it.</summary>
    public string Command => CommandLine.Write(Path, Options);

    /// <summary>For <see cref="ActionKind.Form"/>: the names of the options that the form asks for, at most <see cref="MostFields"/>.</summary>
    public IReadOnlyList<string> Fields { get; private init; } = [];

    /// <summary>A button that opens a form; what is sent is the command with the fields' texts in place of its own.</summary>
    /// <param name="label">What stands on it.</param>
    /// <param name="path">The command that answers the form.</param>
    /// <param name="options">What is known already: fields start with it, what is no field goes along unseen.</param>
    /// <param name="fields">What is asked for.</param>
    /// <exception cref="ArgumentException">No field, or more than <see cref="MostFields"/>.</exception>
    public static ReplyAction Form(
        string label, string path, IReadOnlyDictionary<string, string> options, params IReadOnlyList<CommandOption> fields) =>
        fields.Count is > 0 and <= MostFields
            ? new(label, ActionKind.Form, path, options) { Fields = [.. fields.Select(field => field.Name)] }
            : throw new ArgumentException($"A form has 1 to {MostFields} fields, not {fields.Count}.", nameof(fields));

    /// <summary>The same in other words: on it, and in the options of its command.</summary>
    public ReplyAction Reworded(Func<string, string> reword) =>
        new(reword(Label), Kind, Path, Options.ToDictionary(option => option.Key, option => reword(option.Value))) { Fields = Fields };

    /// <summary>The button of an answer that has pictures: they are drawn and sent only when somebody wants them.</summary>
    public static ReplyAction Picture(Request request) => new("Picture", ActionKind.Picture, request.Path, request.Written);

    /// <summary>The two buttons that every answer can have.</summary>
    public static IReadOnlyList<ReplyAction> WhyAndShare(Request request) =>
    [
        new("Why", ActionKind.Why, request.Path, request.Written),
        new("Share", ActionKind.Share, request.Path, request.Written),
    ];
}
