using System.Collections.Concurrent;
using CrewBot.Core.Knowledge;
using CrewBot.Storage;
using CrewBot.Storage.Boxes;
using CrewBot.Storage.Connections;
using CrewBot.Storage.Crews;
using CrewBot.Storage.Ice;
using CrewBot.Storage.Requests;

namespace CrewBot.Chat.Commands;

/// <summary>What the crews have stored, as commands see it: opened at the first use, and scoped to the crew that asks.</summary>
public sealed class CrewBook : IAsyncDisposable
{
    private static readonly TimeSpan ForgettingPause = TimeSpan.FromDays(1);

    private readonly string? _path;
    private readonly SemaphoreSlim _opening = new(1, 1);
    private readonly ConcurrentDictionary<string, (long Revision, IReadOnlyList<WaterRules> Waters)> _waters = new();
    private readonly ConcurrentDictionary<string, DateTimeOffset> _forgotAnswers = new();
    private readonly TaskCompletionSource<Database> _opened = new(TaskCreationOptions.RunContinuationsAsynchronously);
    private Database? _database;

    private CrewBook(string? path) => _path = path;

    /// <summary>A book for a process without a database: it refuses in a line.</summary>
    public static CrewBook None { get; } = new(null);

    /// <summary>The book in a file.</summary>
    public static CrewBook At(string path) => new(path);

    // A question alone makes no file.
    internal bool HoldsNothing => _path is null || (_database is null && !File.Exists(_path));

    /// <summary>Whether there is a place to store anything.</summary>
    public bool HasPlace => _path is not null;

    /// <summary>The caller with what the crew and the person have set. Without a database, as the platform gave them.</summary>
    public async Task<Caller> WithSettingsAsync(Caller caller, CancellationToken cancellationToken) => await FindAsync(
        caller,
        default,
        (crew, database) => database.RecallAsync(crew, caller.Member, session => SettingsOfAsync(caller, session), cancellationToken),
        cancellationToken) is { } settings ? settings.Give(caller) : caller;

    /// <summary>
    /// The caller with what the crew and the person have set, and the first answer to a call that has changed something already:
    /// what every change asks before anything else, asked in one go.
    /// </summary>
    public Task<(Caller Caller, Reply? First)> WithFirstAnswerAsync(CommandCall call, CancellationToken cancellationToken) => FindAsync(
        call.Caller,
        (call.Caller, default(Reply)),
        (crew, database) => database.GlanceAsync(
            crew,
            async session => ((await SettingsOfAsync(call.Caller, session)).Give(call.Caller), await FirstAnswerAsync(call.Id, session)),
            cancellationToken),
        cancellationToken);

    /// <summary>The caller with what is in their box and whom the crew shares with as well, to suggest it.</summary>
    public async Task<Caller> WithSuggestionsAsync(Caller caller, CancellationToken cancellationToken)
    {
        var known = await WithSettingsAsync(caller, cancellationToken);
        if (caller.Crew is not { } crew || HoldsNothing)
        {
            return known;
        }

        try
        {
            var database = await OpenAsync(cancellationToken);
            return await database.ReadAsync(
                crew,
                async session => known with
                {
                    Gear = await new MemberRepository(session).FindAsync(caller.Member) is { } member
                        ? [.. (await new BoxRepository(session).OfAsync(member.Id)).Select(thing => thing.Gear)]
                        : [],
                    Partners = await new IcePartnerRepository(session).AllAsync(),
                },
                cancellationToken);
        }
        catch (StorageException)
        {
            return known;
        }
    }

    /// <summary>The crews that a person has written in, the latest first; none without a database.</summary>
    public async Task<IReadOnlyList<string>> CrewsOfAsync(string person, CancellationToken cancellationToken)
    {
        if (HoldsNothing)
        {
            return [];
        }

        try
        {
            var database = await OpenAsync(cancellationToken);
            return await database.CrewsOfAsync(person, cancellationToken);
        }
        catch (StorageException)
        {
            return [];
        }
    }

    /// <summary>Asks about the caller's crew.</summary>
    /// <exception cref="StorageException">The database can't be used.</exception>
    public async Task<T> ReadAsync<T>(Request request, Func<CrewSession, Task<T>> ask, CancellationToken cancellationToken)
    {
        var database = await OpenAsync(cancellationToken);
        return await database.ReadAsync(request.Caller.Crew!, ask, cancellationToken);
    }

    /// <summary>
    /// Asks about the caller's crew what is good to know but not needed: without a crew, or a database that can be read, there
    /// is another answer.
    /// </summary>
    public async Task<T> ReadOrAsync<T>(Request request, Func<CrewSession, Task<T>> ask, T otherwise, CancellationToken cancellationToken)
    {
        if (request.Caller.Crew is null || HoldsNothing)
        {
            return otherwise;
        }

        try
        {
            return await ReadAsync(request, ask, cancellationToken);
        }
        catch (StorageException)
        {
            return otherwise;
        }
    }

    /// <summary>
    /// Changes something of the caller's crew and keeps the answer, in one transaction: however often the request is
    /// delivered, it changes once and answers the same. A refusal changes nothing.
    /// </summary>
    /// <param name="request">The request.</param>
    /// <param name="change">Makes the change and says the answer. It may be run again, so it must do nothing but ask and change.</param>
    /// <param name="cancellationToken">Gives up before the change is made.</param>
    /// <exception cref="StorageException">The database can't be used.</exception>
    public async Task<Reply> WriteOnceAsync(
        Request request, Func<CrewSession, CrewMember, Task<Reply>> change, CancellationToken cancellationToken)
    {
        var database = await OpenAsync(cancellationToken);
        try
        {
            return await database.WriteAsync(request.Caller.Crew!, session => OnceAsync(request, session, change), cancellationToken);
        }
        catch (RefusedException refused)
        {
            return refused.Reply;
        }
    }

    /// <summary>The database, for work that nobody asks for: waits until there is one and somebody has opened it.</summary>
    public async Task<Database> DatabaseAsync(CancellationToken cancellationToken)
    {
        try
        {
            if (File.Exists(_path))
            {
                return await OpenAsync(cancellationToken);
            }
        }
        catch (StorageException)
        {
            // Whoever asks a command next is told why; what mends it is noticed then.
        }

        return await _opened.Task.WaitAsync(cancellationToken);
    }

    public async ValueTask DisposeAsync()
    {
        if (_database is not null)
        {
            await _database.DisposeAsync();
        }
    }

    /// <summary>The database, opened at the first use.</summary>
    /// <exception cref="StorageException">It can't be used; the line says why.</exception>
    internal ValueTask<Database> OpenAsync(CancellationToken cancellationToken) =>
        _database is { } open ? new(open) : OpenFileAsync(cancellationToken);

    private async ValueTask<Database> OpenFileAsync(CancellationToken cancellationToken)
    {
        if (_path is null)
        {
            throw new StorageException("Nothing can be stored: there is no place for a database. Set CrewBot:Database to the path of a file.");
        }

        await _opening.WaitAsync(cancellationToken);
        try
        {
            _database ??= await Database.OpenAsync(_path, cancellationToken);
            _opened.TrySetResult(_database);
            return _database;
        }
        finally
        {
            _opening.Release();
        }
    }

    private async Task<T?> FindAsync<T>(
        Caller caller, T? otherwise, Func<string, Database, Task<T>> find, CancellationToken cancellationToken)
    {
        if (caller.Crew is not { } crew || HoldsNothing)
        {
            return otherwise;
        }

        try
        {
            return await find(crew, await OpenAsync(cancellationToken));
        }
        catch (StorageException)
        {
            // What needs no database works on; what needs it will say why it can't.
            return otherwise;
        }
    }

    private static async Task<Reply?> FirstAnswerAsync(string requestId, CrewSession session) =>
        await new RequestRepository(session).FindAnswerAsync(requestId) is { } answer ? ReplyJson.Read(answer) : null;

    private async Task<Reply> OnceAsync(Request request, CrewSession session, Func<CrewSession, CrewMember, Task<Reply>> change)
    {
        // Two deliveries may both have found no answer: the second finds it here.
        if (await FirstAnswerAsync(request.Id, session) is { } first)
        {
            return first;
        }

        if (request.Caller.CrewName is { } name)
        {
            await new CrewRepository(session).SetNameAsync(name);
        }

        var member = await new MemberRepository(session).FindOrAddAsync(request.Caller.Member, request.Caller.Name);
        var reply = await change(session, member);
        if (reply.Problem is not null)
        {
            throw new RefusedException(reply);
        }

        var requests = new RequestRepository(session);
        await requests.RememberAsync(request.Id, member.Id, ReplyJson.WriteShort(reply), request.At);
        await ForgetAnswersAsync(request, session, requests);
        return reply;
    }

    // By the first change of a crew in a day, for a program that runs no longer than its answer: to look with every change is too much.
    private async Task ForgetAnswersAsync(Request request, CrewSession session, RequestRepository requests)
    {
        var crew = request.Caller.Crew!;
        if (_forgotAnswers.TryGetValue(crew, out var last) && request.At - last < ForgettingPause)
        {
            return;
        }

        await requests.ForgetAsync(request.At - RequestRepository.Kept);
        session.Afterwards(() => _forgotAnswers[crew] = request.At);
    }

    private async Task<CallerSettings> SettingsOfAsync(Caller caller, CrewSession session)
    {
        var settings = await new CrewRepository(session).FindAsync();
        var member = await new MemberRepository(session).FindAsync(caller.Member);
        return new CallerSettings(settings, member, await WatersAsync(caller.Crew!, settings.Revision, session));
    }

    private async Task<IReadOnlyList<WaterRules>> WatersAsync(string crew, long revision, CrewSession session)
    {
        if (_waters.TryGetValue(crew, out var kept) && kept.Revision == revision)
        {
            return kept.Waters;
        }

        var waters = (await new WaterRepository(session).AllAsync()).Select(RulesOfWater.From).ToList();
        _waters[crew] = (revision, waters);
        return waters;
    }
}
