using System.Collections.Frozen;
using System.Diagnostics.CodeAnalysis;

namespace CrewBot.Chat.Commands;

/// <summary>All commands, found by family and verb.</summary>
public sealed class CommandCatalog
{
    private readonly FrozenDictionary<string, ICommandHandler> handlers;

    /// <param name="handlers">One for each command.</param>
    /// <param name="bare">The path of the command that words without a command are read as.</param>
    public CommandCatalog(IEnumerable<ICommandHandler> handlers, string bare)
    {
        this.handlers = handlers.ToFrozenDictionary(handler => handler.Info.Path);
        Commands = [.. this.handlers.Values.Select(handler => handler.Info).OrderBy(info => info.Path, StringComparer.Ordinal)];
        Families = [.. Commands.Select(info => info.Family).Distinct()];
        Bare = this.handlers[bare].Info;
    }

    /// <summary>Every command, by path.</summary>
    public IReadOnlyList<CommandInfo> Commands { get; }

    public IReadOnlyList<string> Families { get; }

    /// <summary>The command that words without a command are read as.</summary>
    public CommandInfo Bare { get; }

    public bool TryFind(string path, [MaybeNullWhen(false)] out ICommandHandler handler) =>
        handlers.TryGetValue(path, out handler);
}
