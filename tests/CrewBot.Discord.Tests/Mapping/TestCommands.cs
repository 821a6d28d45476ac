using CrewBot.Chat;
using CrewBot.Chat.Commands;
using CrewBot.Core.Knowledge;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging;

namespace CrewBot.Discord.Tests.Mapping;

/// <summary>The real commands, and one that a test may bend.</summary>
internal sealed class TestCommands : ICommandHandler
{
    public const string Path = "test try";

    private TestCommands()
    {
    }

    /// <summary>What the bendable command does.</summary>
    public Func<Request, CancellationToken, Task<Reply>> Work { get; set; } =
        static (_, _) => Task.FromResult(new Reply { Headline = "Done", Lines = ["One line."] });

    public CommandInfo Info { get; } = new(
        Path,
        "Tries something",
        "/test try word:x",
        [
            CommandOption.Optional("word", "Any word", new FreeTextReader("a word")),
            CommandOption.Optional("other", "Any other word", new FreeTextReader("a word")),
        ])
    {
        NeedsNoCrew = true,
    };

    public CommandCatalog Catalog { get; private set; } = null!;
    public Dispatcher Dispatcher { get; private set; } = null!;

    public static CommandCatalog RealCatalog => Real().GetRequiredService<CommandCatalog>();

    public static TestCommands Create(ILoggerFactory logs)
    {
        var commands = new TestCommands();
        commands.Catalog = new CommandCatalog([.. Real().GetServices<ICommandHandler>(), commands], bare: "rig plan");
        commands.Dispatcher = new Dispatcher(commands.Catalog, CrewBook.None, new Logger<Dispatcher>(logs));
        return commands;
    }

    public Task<Reply> HandleAsync(Request request, CancellationToken cancellationToken) => Work(request, cancellationToken);

    private static ServiceProvider Real() =>
        new ServiceCollection().AddLogging().AddChat(TradeKnowledge.BuiltIn).BuildServiceProvider();
}
