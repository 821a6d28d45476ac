namespace CrewBot.Chat.Commands;

/// <summary>What a command is called, what it is for and what it takes.</summary>
/// <param name="Path">Family and verb: <c>rig plan</c>.</param>
/// <param name="Description">What it does, in at most 100 characters.</param>
/// <param name="Example">A whole call that works.</param>
/// <param name="Options">Required ones first.</param>
public sealed record CommandInfo(string Path, string Description, string Example, IReadOnlyList<CommandOption> Options)
{
    public string Family => Path[..Path.IndexOf(' ', StringComparison.Ordinal)];

    public string Verb => Path[(Path.IndexOf(' ', StringComparison.Ordinal) + 1)..];

    /// <summary>Answers in a direct message too: it needs no crew.</summary>
    public bool NeedsNoCrew { get; init; }

    /// <summary>
    /// Answers in a direct message too, for the crew that the asker belongs to: what one person on the ice wants of it, as
    /// opposed to what the crew settles together in a channel.
    /// </summary>
    public bool FromAnywhere { get; init; }

    /// <summary>Whether it answers outside a crew's own chat.</summary>
    public bool WorksDirectly => NeedsNoCrew || FromAnywhere;

    /// <summary>The least role that may call it.</summary>
    public Role Role { get; init; } = Role.Member;

    /// <summary>Changes what is stored: a request that is delivered again gets its first answer.</summary>
    public bool Writes { get; init; }

    /// <summary>A word that stands for family and verb when it starts a typed line; null for none.</summary>
    public string? Word { get; init; }

    /// <summary>
    /// What a line begins with, in lower case, of whoever means this command and has another word for it: "undo", "derby end".
    /// Such a line runs nothing: it is told what to type.
    /// </summary>
    public IReadOnlyList<string> AlsoSaid { get; init; } = [];

    /// <summary>What to say to plain words, in lower case, that no command answers; null to any others.</summary>
    public Func<string, string?>? OnPlainWords { get; init; }

    /// <summary>Takes words without option names; null when the command has no shorthand.</summary>
    public Shorthand? Shorthand { get; init; }

    /// <summary>A required option that the command may find by itself when it is not said; null for none.</summary>
    public CommandOption? Found { get; init; }

    /// <summary>Its place in the menu of a message; null for none.</summary>
    public MessageMenu? OnMessage { get; init; }

    /// <summary>Its place in the menu of a person; null for none.</summary>
    public PersonMenu? OnPerson { get; init; }

    /// <summary>Whether a platform's form must insist on an option: with a shorthand the words may name it instead.</summary>
    public bool Insists(CommandOption option) => option.IsRequired && Shorthand is null;
}
