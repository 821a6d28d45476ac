namespace CrewBot.Discord.Wire;

internal enum InteractionType
{
    Ping = 1,
    Command = 2,
    Component = 3,
    Autocomplete = 4,
    ModalSubmit = 5,
}
