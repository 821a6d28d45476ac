using CrewBot.Chat.Commands;

namespace CrewBot.Worker.Rooms;

/// <summary>Help, made from what the commands declare.</summary>
internal static class HelpReply
{
    private const int ShortestVerb = 4;

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

        if (topic.Count == 1 && catalog.Families.Contains(topic[0]))
        {
            return Family(topic[0], catalog);
        }

        // "help log" and "help spread" can mean one command only.
        return topic.Count == 1 && catalog.Commands.Where(info => info.Verb == topic[0] || info.Word == topic[0]).ToList() is [var only]
            ? Of(only)
            : Reply.Refuse($"There is no command {Quoting.Quote(string.Join(' ', topic))}. "
                + (Nearest.Near(string.Join(' ', topic), catalog.Commands.Select(info => info.Path)) is [var near, ..] ? $"Nearest: help {near}" : "help lists what there is."));
    }

    /// <summary>Where to look for what a line of plain words may have been about, when it makes no plan.</summary>
    public static string PointerFor(string line, CommandCatalog catalog)
    {
        var said = line.ToLowerInvariant().Split([' ', '\t', ',', '.', '!', '?'], StringSplitOptions.RemoveEmptyEntries);
        // "down", "out" and the like stand in many a sentence that asks for something else.
        var about = catalog.Commands
            .Where(info => said[0] == info.Verb || (info.Verb.Length > ShortestVerb && said.Contains(info.Verb)))
            .OrderByDescending(info => said.Contains(info.Family))
            .Select(info => info.Path)
            .Concat(catalog.Families.Where(said.Contains))
            .FirstOrDefault();
        return about is null ? "help lists what else can be asked." : $"Not about a rig? help {about}";
    }

    private static Reply Everything(CommandCatalog catalog) => new()
    {
        Headline = "What can be asked",
        Lines =
        [
            .. catalog.Families.Select(family => Verbs(family, catalog)),
            $"Words alone are read as /{catalog.Bare.Path}. What a command takes first needs no name: /catch best walleye",
            "help rig: what each of them does; help rig plan: what a command takes",
            "why: the reasons and figures behind the last answer",
            "share: the last answer as the crew would see it",
            "1, 2, …: press a button under the last answer; its name does too",
            "pictures:on, pictures:off: whether every answer's picture is drawn, or only when you press Picture",
            "exit: leave the room",
        ],
    };

    private static string Verbs(string family, CommandCatalog catalog) =>
        $"/{family}: {string.Join(", ", catalog.Commands.Where(info => info.Family == family).Select(info => info.Verb))}";

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
