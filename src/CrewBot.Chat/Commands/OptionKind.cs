namespace CrewBot.Chat.Commands;

/// <summary>What a person gives for an option, so that a platform can offer the right way to give it.</summary>
public enum OptionKind
{
    /// <summary>Words, typed or chosen.</summary>
    Words,

    /// <summary>A file: sent along, or a link to it.</summary>
    File,

    /// <summary>Somebody of the crew.</summary>
    Person,

    /// <summary>A channel of the crew's chat.</summary>
    Channel,

    /// <summary>A role of the crew's chat.</summary>
    Role,
}
