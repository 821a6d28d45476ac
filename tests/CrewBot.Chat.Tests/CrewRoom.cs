using CrewBot.Chat.Commands;
using CrewBot.Chat.Photos;
using CrewBot.Core.Knowledge;
using CrewBot.Storage.Connections;
using Microsoft.Data.Sqlite;
using Microsoft.Extensions.DependencyInjection;

namespace CrewBot.Chat.Tests;

/// <summary>Commands with a database of their own, in a real file, and a clock that the test sets.</summary>
public sealed class CrewRoom : IAsyncDisposable
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("crewbot-");
    private readonly CrewBook _book;
    private readonly ServiceProvider _services;
    private readonly ListedCopies _copies = new();
    private int _requests;

    public CrewRoom()
    {
        _book = CrewBook.At(Path.Combine(_folder.FullName, "crew.db"));
        _services = new ServiceCollection().AddLogging().AddSingleton<IPhotoCopies>(_copies).AddChat(TradeKnowledge.BuiltIn, _book).BuildServiceProvider();
    }

    /// <summary>When the next request is sent.</summary>
    public DateTimeOffset Now { get; set; } = new(2027, 1, 16, 20, 0, 0, TimeSpan.Zero);

    /// <summary>Where the next request is given; null for nowhere.</summary>
    public string? Place { get; set; }

    public CommandCatalog Catalog => _services.GetRequiredService<CommandCatalog>();

    /// <summary>The file that the next request gives, by any name.</summary>
    public ReadOnlyMemory<byte> File { get; set; }

    /// <summary>Why the next request's file can't be had; null when it can.</summary>
    public string? FileFault { get; set; }

    /// <summary>The copies of photos that are kept: crew, hash.</summary>
    public IReadOnlyCollection<(string Crew, string Hash)> Copies => _copies.Kept;

    /// <summary>Writes to the crew's book, past the commands.</summary>
    public async Task WriteAsync(Func<CrewSession, Task> change, string crew = "tamarack")
    {
        await using var database = await Database.OpenAsync(Path.Combine(_folder.FullName, "crew.db"), TestContext.Current.CancellationToken);
        await database.WriteAsync(crew, change, TestContext.Current.CancellationToken);
    }

    /// <summary>The database's file as it lies on the disk once everything has settled in it.</summary>
    public async Task<byte[]> BytesAsync()
    {
        var path = Path.Combine(_folder.FullName, "crew.db");
        await using var connection = new SqliteConnection($"Data Source={path};Pooling=False");
        await connection.OpenAsync(TestContext.Current.CancellationToken);
        await using var settle = connection.CreateCommand();
        settle.CommandText = "PRAGMA wal_checkpoint(TRUNCATE)";
        await settle.ExecuteNonQueryAsync(TestContext.Current.CancellationToken);
        return await System.IO.File.ReadAllBytesAsync(path, TestContext.Current.CancellationToken);
    }

    /// <summary>Answers one typed line.</summary>
    public async Task<Reply> SayAsync(
        string line, string member = "Ana", Role role = Role.Owner, string? crew = "tamarack", string? id = null, string? crewName = null, string? name = null)
    {
        var typed = CommandText.Read(line, Catalog);
        if (typed.Fault is { } fault)
        {
            return Reply.Refuse(fault);
        }

        var caller = new Caller(crew, member, role, CrewUnits.Customary) { CrewName = crewName, Name = name ?? member };
        return await _services.GetRequiredService<Dispatcher>().AnswerAsync(
            new CommandCall(id ?? $"request-{++_requests}", Now, caller, typed.Value!.Path, typed.Value.Options) { Files = new OneFile(File, FileFault), Place = Place },
            TestContext.Current.CancellationToken);
    }

    /// <summary>Answers one typed line of Ana's as a process does that was started just now.</summary>
    public async Task<Reply> AfreshAsync(string line)
    {
        await using var book = CrewBook.At(Path.Combine(_folder.FullName, "crew.db"));
        await using var services = new ServiceCollection().AddLogging().AddChat(TradeKnowledge.BuiltIn, book).BuildServiceProvider();
        var typed = CommandText.Read(line, Catalog).Value!;
        var caller = new Caller("tamarack", "Ana", Role.Owner, CrewUnits.Customary);
        return await services.GetRequiredService<Dispatcher>().AnswerAsync(
            new CommandCall($"afresh-{++_requests}", Now, caller, typed.Path, typed.Options), TestContext.Current.CancellationToken);
    }

    /// <summary>Answers a call as the menu of a message makes it, for Ana.</summary>
    public Task<Reply> CallAsync(string path, IReadOnlyDictionary<string, string> options, IReadOnlyDictionary<string, string> given) =>
        _services.GetRequiredService<Dispatcher>().AnswerAsync(
            new CommandCall($"request-{++_requests}", Now, new Caller("tamarack", "Ana", Role.Owner, CrewUnits.Customary), path, options) { Given = given },
            TestContext.Current.CancellationToken);

    /// <summary>What Ana, or another member, is offered while writing an option.</summary>
    public Task<IEnumerable<string>> SuggestAsync(string path, string option, string begun, string member = "Ana", string? crew = "tamarack") =>
        _services.GetRequiredService<Dispatcher>().SuggestAsync(
            new Caller(crew, member, Role.Owner, CrewUnits.Customary), path, option, begun, TestContext.Current.CancellationToken);

    public async ValueTask DisposeAsync()
    {
        await _services.DisposeAsync();
        await _book.DisposeAsync();
        _folder.Delete(recursive: true);
    }

    private sealed class ListedCopies : IPhotoCopies
    {
        public List<(string Crew, string Hash)> Kept { get; } = [];

        public Task KeepAsync(string crew, string hash, ReadOnlyMemory<byte> photo, CancellationToken cancellationToken)
        {
            Kept.Add((crew, hash));
            return Task.CompletedTask;
        }

        public int Delete(string crew, IReadOnlyCollection<string> hashes) => Kept.RemoveAll(copy => copy.Crew == crew && hashes.Contains(copy.Hash));
    }

    private sealed class OneFile(ReadOnlyMemory<byte> content, string? fault) : IGivenFiles
    {
        public Task<Reading<ReadOnlyMemory<byte>>> ReadAsync(Attachment file, int most, CancellationToken cancellationToken) =>
            Task.FromResult<Reading<ReadOnlyMemory<byte>>>(fault is null ? content : new Misread(fault));
    }
}
