namespace CrewBot.Chat.Commands;

/// <summary>What pressing a button does.</summary>
public enum ActionKind
{
    /// <summary>Answers another command.</summary>
    Run,

    /// <summary>Shows the reasons and workings of this reply.</summary>
    Why,

    /// <summary>Shows this reply to the whole crew.</summary>
    Share,

    /// <summary>Shows the pictures of this reply.</summary>
    Picture,

    /// <summary>Opens a form, filled in as far as is known, whose texts become options of the command.</summary>
    Form,
}
