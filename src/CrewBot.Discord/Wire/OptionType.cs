namespace CrewBot.Discord.Wire;

internal enum OptionType
{
    Subcommand = 1,
    SubcommandGroup = 2,
    Text = 3,
    WholeNumber = 4,
    Truth = 5,
    User = 6,
    Channel = 7,
    Role = 8,
    Mentionable = 9,
    Number = 10,
    Attachment = 11,
}
