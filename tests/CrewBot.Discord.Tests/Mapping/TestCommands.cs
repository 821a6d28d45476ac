using CrewBot.Chat;
using CrewBot.Chat.Commands;
using CrewBot.Core.Knowledge;
using CrewBot.Discord.Tests.Fakes;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging;

namespace CrewBot.Discord.Tests.Mapping;

/// <summary>The real commands, and one that a test may bend.</summary>
internal sealed class TestCommands : ICommandHandler
{
    public const string Path = "test try";

    public static readonly CommandOption<string> Word = CommandOption.Optional("word", "Any word", new FreeTextReader("a word"));

    private static readonly CommandOption<string> Author = CommandOption.Optional("author", "Who wrote it", new FreeTextReader("a name"));
    private static readonly CommandOption<string> Sent = CommandOption.Optional("sent", "When it was sent", new FreeTextReader("a time"));
    private static readonly CommandOption<string> Link = CommandOption.Optional("link", "Where it stands", new FreeTextReader("a link"));
    private static readonly CommandOption<Attachment> Photo = CommandOption.Optional("photo", "A photo", new AttachmentReader("a photo"));
    private static readonly CommandOption<Person> Who = CommandOption.Optional("who", "Somebody", new PersonReader());

    private TestCommands()
    {
    }

    /// <summary>What the bendable command does.</summary>
    public Func<Request, CancellationToken, Task<Reply>> Work { get; set; } =
        static (_, _) => Task.FromResult(new Reply { Headline = "Done", Lines = ["One line."] });

    /// <summary>What becomes of pictures.</summary>
    public FakeDrawer Drawer { get; } = new();

    public CommandInfo Info { get; } = new(
        Path,
        "Tries something",
        "/test try word:x",
        [
            Word,
            CommandOption.Optional("other", "Any other word", new FreeTextReader("a word")),
            Author, Sent, Link, Photo, Who,
        ])
    {
        NeedsNoCrew = true,
        OnMessage = new("Try this message") { Text = Word, Author = Author, SentAt = Sent, Link = Link, Photo = Photo },
        OnPerson = new("Try this person", Who),
    };

    public CommandCatalog Catalog { get; private set; } = null!;
    public Dispatcher Dispatcher { get; private set; } = null!;

    public CrewBook Book { get; private init; } = CrewBook.None;

    public static CommandCatalog RealCatalog => Real(CrewBook.None).GetRequiredService<CommandCatalog>();

    public static TestCommands Create(ILoggerFactory logs, string? database = null)
    {
        var commands = new TestCommands { Book = database is null ? CrewBook.None : CrewBook.At(database) };
        commands.Catalog = new CommandCatalog([.. Real(commands.Book).GetServices<ICommandHandler>(), commands], bare: "rig plan");
        commands.Dispatcher = new Dispatcher(commands.Catalog, commands.Book, new Logger<Dispatcher>(logs));
        return commands;
    }

    public Task<Reply> HandleAsync(Request request, CancellationToken cancellationToken) => Work(request, cancellationToken);

    private static ServiceProvider Real(CrewBook book) =>
        new ServiceCollection().AddLogging().AddChat(TradeKnowledge.BuiltIn, book).BuildServiceProvider();
}
