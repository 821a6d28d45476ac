using CrewBot.Chat.Commands;
using CrewBot.Discord.Wire;

namespace CrewBot.Discord.Mapping;

/// <summary>
/// Writes what the platform is told of the commands, from the options that they declare. Options of words are texts: what
/// people write (<c>24ft</c>, <c>7.3 m</c>) is read by Chat, here as in every other room.
/// </summary>
internal sealed class CommandDefinitions(CommandCatalog catalog, French french)
{
    private static readonly IReadOnlyList<int> InstalledInGuilds = [0];

    /// <summary>All definitions. Where a command may be used is said of global ones only.</summary>
    public CommandDefinition[] Write(bool global) =>
    [
        .. catalog.Families.Select(family => Family(family, global)),
        .. MenuCommand.In(catalog).Select(menu => Menu(menu, global)),
    ];

    private CommandDefinition Family(string family, bool global)
    {
        var commands = catalog.Commands.Where(info => info.Family == family).ToList();
        var verbs = string.Join(", ", commands.Select(info => info.Verb));
        return new CommandDefinition
        {
            Name = family,
            Type = CommandType.Slash,
            Description = Shortening.Fit($"{family}: {verbs}", Limits.Description),
            Options = [.. commands.Select(Verb)],
            Contexts = global ? Contexts(commands.Any(info => info.WorksDirectly)) : null,
            IntegrationTypes = global ? InstalledInGuilds : null,
        };
    }

    private static CommandDefinition Menu(MenuCommand menu, bool global) => new()
    {
        Name = menu.Name,
        Type = menu.Type,
        Contexts = global ? Contexts(menu.Info.WorksDirectly) : null,
        IntegrationTypes = global ? InstalledInGuilds : null,
    };

    private static IReadOnlyList<InteractionContext> Contexts(bool directToo) =>
        directToo ? [InteractionContext.Guild, InteractionContext.BotDirectMessage] : [InteractionContext.Guild];

    private CommandOptionDefinition Verb(CommandInfo info) => new()
    {
        Type = OptionType.Subcommand,
        Name = info.Verb,
        Description = info.Description,
        DescriptionLocalizations = french.Of(info.Description),
        Options =
        [
            .. info.Options.OrderByDescending(info.Insists).Select(option => Option(option, info.Insists(option))),
        ],
    };

    private CommandOptionDefinition Option(CommandOption option, bool required)
    {
        var fixedChoices = option.Choices.Count is > 0 and <= Limits.Choices;
        return new CommandOptionDefinition
        {
            Type = option.Kind switch
            {
                OptionKind.File => OptionType.Attachment,
                OptionKind.Person => OptionType.User,
                OptionKind.Channel => OptionType.Channel,
                OptionKind.Role => OptionType.Role,
                _ => OptionType.Text,
            },
            Name = option.Name,
            Description = option.Description,
            DescriptionLocalizations = french.Of(option.Description),
            Required = required ? true : null,
            Choices = fixedChoices
                ? [.. option.Choices.Select(choice => new Choice { Name = choice, Value = choice })]
                : null,
            Autocomplete = !fixedChoices && option.Kind is OptionKind.Words && option.CanSuggest ? true : null,
        };
    }
}
