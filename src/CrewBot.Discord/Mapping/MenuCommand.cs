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

    /// <summary>The call with the options that what it was called on gives; null when the platform left that out.</summary>
    public CommandCall? On(Interaction interaction, CommandCall call)
    {
        if (interaction.Data?.TargetId is not { } target)
        {
            return null;
        }

        if (Type is CommandType.User)
        {
            return call with { Options = new Dictionary<string, string> { [Info.OnPerson!.Person.Name] = new Person(target.ToString()).Text } };
        }

        if (interaction.Data.Resolved?.Messages?.GetValueOrDefault(target) is not { } message)
        {
            return null;
        }

        var seen = MessageReader.Read(message, target, interaction);
        return call with { Options = Info.OnMessage!.SaidIn(seen), Given = Info.OnMessage.GivenBy(seen) };
    }
}
