namespace CrewBot.Discord.Wire;

internal enum CommandType
{
    Slash = 1,
    User = 2,
    Message = 3,
}
