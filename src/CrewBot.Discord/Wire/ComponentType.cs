namespace CrewBot.Discord.Wire;

internal enum ComponentType
{
    ActionRow = 1,
    Button = 2,
    StringSelect = 3,
    TextInput = 4,
    Label = 18,
}
