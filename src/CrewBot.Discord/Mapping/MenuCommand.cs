using CrewBot.Chat.Commands;
using CrewBot.Discord.Wire;

namespace CrewBot.Discord.Mapping;

/// <summary>A command in the menu of a message or a person.</summary>
/// <param name="Name">As the menu shows it.</param>
/// <param name="Type">Whose menu.</param>
/// <param name="Info">The command that answers.</param>
internal sealed record MenuCommand(string Name, CommandType Type, CommandInfo Info)
{
    public static IReadOnlyList<MenuCommand> In(CommandCatalog catalog) =>
    [
        .. catalog.Commands.Where(info => info.OnMessage is not null).Select(info => new MenuCommand(info.OnMessage!.Label, CommandType.Message, info)),
        .. catalog.Commands.Where(info => info.OnPerson is not null).Select(info => new MenuCommand(info.OnPerson!.Label, CommandType.User, info)),
    ];

    /// <summary>The options that what it was called on gives; null when the platform left it out.</summary>
    public Dictionary<string, string>? OptionsFrom(Interaction interaction)
    {
        if (interaction.Data?.TargetId is not { } target)
        {
            return null;
        }

        if (Type is CommandType.User)
        {
            return new() { [Info.OnPerson!.Person.Name] = new Person(target.ToString()).Text };
        }

        return interaction.Data.Resolved?.Messages?.GetValueOrDefault(target) is { } message
            ? Info.OnMessage!.OptionsFrom(MessageReader.Read(message, target, interaction))
            : null;
    }
}
