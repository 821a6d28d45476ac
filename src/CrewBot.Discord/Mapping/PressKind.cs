namespace CrewBot.Discord.Mapping;

/// <summary>What pressing a button or sending a form does.</summary>
internal enum PressKind
{
    Run = 'R',
    Why = 'W',
    Share = 'S',
    Picture = 'P',

    /// <summary>Shows the pictures to the crew.</summary>
    SharePicture = 'Q',

    /// <summary>Opens a form.</summary>
    Open = 'O',

    /// <summary>Sends a form that was opened.</summary>
    Form = 'F',
}
