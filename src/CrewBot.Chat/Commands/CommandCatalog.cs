using System.Collections.Frozen;
using System.Diagnostics.CodeAnalysis;

namespace CrewBot.Chat.Commands;

/// <summary>All commands, found by family and verb.</summary>
public sealed class CommandCatalog
{
    private readonly FrozenDictionary<string, ICommandHandler> _handlers;

    /// <param name="handlers">One for each command.</param>
    /// <param name="bare">The path of the command that words without a command are read as.</param>
    public CommandCatalog(IEnumerable<ICommandHandler> handlers, string bare)
    {
        _handlers = handlers.ToFrozenDictionary(handler => handler.Info.Path);
        Commands = [.. _handlers.Values.Select(handler => handler.Info).OrderBy(info => info.Path, StringComparer.Ordinal)];
        Families = [.. Commands.Select(info => info.Family).Distinct()];
        Bare = _handlers[bare].Info;
    }

    /// <summary>Every command, by path.</summary>
    public IReadOnlyList<CommandInfo> Commands { get; }

    public IReadOnlyList<string> Families { get; }

    /// <summary>The command that words without a command are read as.</summary>
    public CommandInfo Bare { get; }

    public bool TryFind(string path, [MaybeNullWhen(false)] out ICommandHandler handler) =>
        _handlers.TryGetValue(path, out handler);
}
