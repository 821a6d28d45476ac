namespace CrewBot.Discord.Mapping;

/// <summary>What pressing a button or sending a form does.</summary>
internal enum PressKind
{
    Run = 'R',
    Why = 'W',
    Share = 'S',
    Form = 'F',
}
