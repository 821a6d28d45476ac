using System.Globalization;
using CrewBot.Chat;
using CrewBot.Chat.Commands;
using CrewBot.Chat.Posts;
using CrewBot.Core.Knowledge;
using Microsoft.Extensions.DependencyInjection;

namespace CrewBot.Worker.Tests.Trips;

/// <summary>A crew's bot on one file, started anew for every command and for every look at the clock.</summary>
/// <param name="room">Where it posts; null for this station itself.</param>
internal sealed class TripStation(IChatPost? room = null) : IChatPost, IDisposable
{
    public const string Crew = "tamarack";

    private static readonly TimeZoneInfo Zone = TimeZoneInfo.FindSystemTimeZoneById("America/Winnipeg");

    private readonly TemporaryFolder _folder = new();
    private readonly List<string> _heard = [];
    private int _commands;

    private static CancellationToken Limit => TestContext.Current.CancellationToken;

    /// <summary>A reply that a post brought last, by its headline's first word.</summary>
    public Dictionary<string, Reply> Bodies { get; } = [];

    /// <summary>Answers one command, given at a time of the crew's clock; nothing is posted meanwhile.</summary>
    public async Task<Reply> SayAsync(string local, string who, string line)
    {
        await using var book = CrewBook.At(_folder.File("crew.db"));
        await using var services = new ServiceCollection().AddLogging().AddChat(TradeKnowledge.BuiltIn, book).BuildServiceProvider();
        var typed = CommandText.Read(line, services.GetRequiredService<CommandCatalog>()).Value!;
        var caller = new Caller(Crew, who, who == "Ana" ? Role.Owner : Role.Member, CrewUnits.Customary);
        var reply = await services.GetRequiredService<Dispatcher>().AnswerAsync(
            new CommandCall($"r{++_commands}", At(local), caller, typed.Path, typed.Options) { Place = "room" }, Limit);
        return reply;
    }

    /// <summary>Runs the bot at a time of the crew's clock until it has nothing more to say, and stops it.</summary>
    /// <returns>What it said meanwhile.</returns>
    public async Task<IReadOnlyList<string>> RunAsync(string local)
    {
        _heard.Clear();
        await PumpRun.UntilQuietAsync(_folder.File("crew.db"), Crew, room ?? this, At(local));
        return [.. _heard.Order(StringComparer.Ordinal)];
    }

    public bool Reaches(string crew, string place) => true;

    public Task<Posted> PostAsync(string place, string key, Reply reply, bool notifies, CancellationToken cancellationToken)
    {
        Hear($"{place}{(notifies ? "!" : "")}{(reply.Calls is { } role ? $" @{role}" : "")}", reply);
        return Task.FromResult(new Posted(place, key));
    }

    public Task EditAsync(Posted posted, Reply reply, CancellationToken cancellationToken)
    {
        Hear($"{posted.Place} edited", reply);
        return Task.CompletedTask;
    }

    public Task DeleteAsync(Posted posted, CancellationToken cancellationToken) => Task.CompletedTask;

    public Task<string> OpenThreadAsync(Posted under, string name, CancellationToken cancellationToken) => Task.FromResult(under.Id);

    public void Dispose() => _folder.Dispose();

    private void Hear(string mark, Reply reply)
    {
        lock (_heard)
        {
            _heard.Add($"{mark}: {reply.Headline}{(reply.Lines is [var first, ..] && first.StartsWith("Late", StringComparison.Ordinal) ? " (late)" : "")}");
            Bodies[reply.Headline.Split(' ')[0]] = reply;
        }
    }

    private static DateTimeOffset At(string local)
    {
        var time = DateTime.ParseExact(local, "yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture);
        return new DateTimeOffset(time, Zone.GetUtcOffset(time)).ToUniversalTime();
    }
}
