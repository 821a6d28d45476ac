using CrewBot.Chat.Commands;

namespace CrewBot.Worker.Rooms;

/// <summary>Help, made from what the commands declare.</summary>
internal static class HelpReply
{
    /// <summary>Answers <c>help</c>, <c>help rig</c> and <c>help rig plan</c>.</summary>
    public static Reply For(string line, CommandCatalog catalog)
    {
        var topic = line.Split([' ', '\t'], StringSplitOptions.RemoveEmptyEntries)[1..]
            .Select(word => word.TrimStart('/').ToLowerInvariant())
            .Where(word => word.Length > 0)
            .ToList();
        if (topic.Count == 0)
        {
            return Everything(catalog);
        }

        if (catalog.TryFind(string.Join(' ', topic), out var handler))
        {
            return Of(handler.Info);
        }

        return topic.Count == 1 && catalog.Families.Contains(topic[0])
            ? Family(topic[0], catalog)
            : Reply.Refuse($"There is no command {Quoting.Quote(string.Join(' ', topic))}. "
                + $"Nearest: help {Nearest.To(string.Join(' ', topic), catalog.Commands.Select(info => info.Path), 1)[0]}");
    }

    private static Reply Everything(CommandCatalog catalog) => new()
    {
        Headline = "What can be asked",
        Lines =
        [
            .. catalog.Commands.Select(Row),
            $"Words alone are read as /{catalog.Bare.Path}.",
            "help rig plan: what a command takes, with an example",
            "why: the reasons and figures behind the last answer",
            "share: the last answer as the crew would see it",
            "1, 2, …: press a button under the last answer; its name does too",
            "pictures:on, pictures:off: whether every answer's picture is drawn, or only when you press Picture",
            "exit: leave the room",
        ],
    };

    private static Reply Family(string family, CommandCatalog catalog) => new()
    {
        Headline = $"What /{family} answers",
        Lines = [.. catalog.Commands.Where(info => info.Family == family).Select(Row)],
    };

    private static Reply Of(CommandInfo info) => new()
    {
        Headline = $"/{info.Path}: {info.Description}",
        Lines = [.. info.Options.Select(Row), $"Example: {info.Example}"],
    };

    private static string Row(CommandInfo info) => $"/{info.Path}: {info.Description}";

    private static string Row(CommandOption option) =>
        $"{option.Name}: {option.Description}{(option.IsRequired ? " (required)" : "")}. Give {option.Accepts}.";
}
