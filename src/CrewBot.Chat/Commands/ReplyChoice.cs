namespace CrewBot.Chat.Commands;

/// <summary>A list under a reply of which one is chosen: more than fits on buttons, or one option with many values.</summary>
/// <param name="Prompt">What the list is for, while nothing is chosen: "Which shelter".</param>
/// <param name="Choices">At most <see cref="Most"/>, each with the command it stands for.</param>
public sealed record ReplyChoice(string Prompt, IReadOnlyList<ReplyAction> Choices)
{
    /// <summary>The most choices that a list can have on every platform.</summary>
    public const int Most = 25;

    /// <summary>A list of values for one option of a command.</summary>
    /// <param name="prompt">What the list is for.</param>
    /// <param name="path">The command that answers.</param>
    /// <param name="options">What is known already.</param>
    /// <param name="option">The option that the choice decides.</param>
    /// <param name="values">How each value is shown, and its text.</param>
    public static ReplyChoice Of(
        string prompt,
        string path,
        IReadOnlyDictionary<string, string> options,
        CommandOption option,
        IEnumerable<(string Label, string Value)> values) =>
        new(prompt,
        [
            .. values.Take(Most).Select(value => new ReplyAction(
                value.Label, ActionKind.Run, path, new Dictionary<string, string>(options) { [option.Name] = value.Value })),
        ]);
}
