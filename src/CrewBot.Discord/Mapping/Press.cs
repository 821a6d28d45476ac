namespace CrewBot.Discord.Mapping;

/// <summary>What a button, a choice or a form stands for: a whole command and what to do with its answer.</summary>
internal sealed record Press(PressKind Kind, string Path, IReadOnlyDictionary<string, string> Options)
{
    /// <summary>The options that a form asks for.</summary>
    public IReadOnlyList<string> Fields { get; init; } = [];
}
