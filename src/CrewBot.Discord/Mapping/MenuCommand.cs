using CrewBot.Chat.Commands;
using CrewBot.Discord.Wire;

namespace CrewBot.Discord.Mapping;

/// <summary>A command in a message's context menu: reads the message's words as those of a shorthand.</summary>
/// <param name="Name">As the menu shows it.</param>
/// <param name="Info">The command that answers.</param>
/// <param name="Words">The option that takes the words.</param>
internal sealed record MenuCommand(string Name, CommandInfo Info, CommandOption Words)
{
    /// <summary>One for the command that bare words are read as, if it takes words.</summary>
    public static IReadOnlyList<MenuCommand> In(CommandCatalog catalog) =>
        catalog.Bare is { Shorthand.Words: { } words } bare
            ? [new MenuCommand($"Ask {bare.Path}", bare, words)]
            : [];

    /// <summary>The text of the message that the menu was opened on.</summary>
    public static string TextOf(InteractionData data) =>
        data.TargetId is { } target && data.Resolved?.Messages?.GetValueOrDefault(target)?.Content is { } text
            ? text.Trim()
            : "";
}
