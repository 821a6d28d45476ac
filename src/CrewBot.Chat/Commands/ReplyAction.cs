namespace CrewBot.Chat.Commands;

/// <summary>A button under a reply.</summary>
/// <param name="Label">What stands on it.</param>
/// <param name="Kind">What pressing it does.</param>
/// <param name="Command">The whole command it stands for, as a person would type it.</param>
public sealed record ReplyAction(string Label, ActionKind Kind, string Command)
{
    /// <summary>The two buttons that every answer can have.</summary>
    public static IReadOnlyList<ReplyAction> WhyAndShare(Request request) =>
        [new("Why", ActionKind.Why, request.Command), new("Share", ActionKind.Share, request.Command)];
}
