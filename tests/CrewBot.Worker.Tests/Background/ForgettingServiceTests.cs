using System.Threading.Channels;
using CrewBot.Chat.Commands;
using CrewBot.Storage.Connections;
using CrewBot.Storage.Crews;
using CrewBot.Storage.Outbox;
using CrewBot.Storage.Requests;
using CrewBot.Worker.Background;
using Microsoft.Data.Sqlite;
using Microsoft.Extensions.Logging;
using Microsoft.Extensions.Time.Testing;

namespace CrewBot.Worker.Tests.Background;

public sealed class ForgettingServiceTests : IDisposable
{
    private static readonly DateTimeOffset Now = new(2027, 1, 16, 12, 0, 0, TimeSpan.Zero);

    private readonly TemporaryFolder _folder = new();
    private readonly FakeTimeProvider _clock = new(Now);

    private static CancellationToken Limit => TestContext.Current.CancellationToken;

    [Fact]
    public async Task ExecuteAsync_DayByDay_ForgetsWhatHasBeenKeptLongEnoughAndNothingElse()
    {
        await using var book = CrewBook.At(_folder.File("crew.db"));
        await using (var database = await Database.OpenAsync(_folder.File("crew.db"), Limit))
        {
            await database.WriteAsync("alpha", WriteAsync, Limit);
            await database.WriteAsync("bravo", WriteAsync, Limit);
        }

        await GiveUpPostsAsync();

        var log = new TellingLogger();
        using var service = new ForgettingService(book, _clock, log);
        await service.StartAsync(Limit);
        await log.Told.ReadAsync(Limit);
        Assert.Equal((true, true, true), await KeptAsync(book, "alpha"));

        _clock.Advance(TimeSpan.FromDays(1));
        await log.Told.ReadAsync(Limit);
        await service.StopAsync(Limit);

        Assert.Equal((false, true, false), await KeptAsync(book, "alpha"));
        Assert.Equal((false, true, false), await KeptAsync(book, "bravo"));
    }

    public void Dispose() => _folder.Dispose();

    private static async Task WriteAsync(CrewSession session)
    {
        var member = await new MemberRepository(session).FindOrAddAsync("1", "Ana");
        var requests = new RequestRepository(session);
        await requests.RememberAsync("old", member.Id, "old", Now - RequestRepository.Kept + TimeSpan.FromHours(1));
        await requests.RememberAsync("new", member.Id, "new", Now);
        await new PostRepository(session).SayAsync("card", "7", "{}", Now - PostRepository.Kept + TimeSpan.FromHours(1));
    }

    // As the pump does after its last attempt.
    private async Task GiveUpPostsAsync()
    {
        await using var connection = new SqliteConnection($"Data Source={_folder.File("crew.db")};Pooling=False");
        await connection.OpenAsync(Limit);
        await using var command = connection.CreateCommand();
        command.CommandText = "UPDATE post SET next_at_ms = NULL, fault = 'gone'";
        await command.ExecuteNonQueryAsync(Limit);
    }

    private static async Task<(bool OldAnswer, bool NewAnswer, bool Post)> KeptAsync(CrewBook book, string crew) =>
        await (await book.DatabaseAsync(Limit)).ReadAsync(
            crew,
            async session => (
                await new RequestRepository(session).FindAnswerAsync("old") is not null,
                await new RequestRepository(session).FindAnswerAsync("new") is not null,
                await new PostRepository(session).FindAsync("card") is not null),
            Limit);

    /// <summary>Tells of each time that something was logged.</summary>
    private sealed class TellingLogger : ILogger<ForgettingService>
    {
        private readonly Channel<string> _told = Channel.CreateUnbounded<string>();

        public ChannelReader<string> Told => _told.Reader;

        public IDisposable? BeginScope<TState>(TState state)
            where TState : notnull => null;

        public bool IsEnabled(LogLevel logLevel) => true;

        public void Log<TState>(LogLevel logLevel, EventId eventId, TState state, Exception? exception, Func<TState, Exception?, string> formatter) =>
            _told.Writer.TryWrite(formatter(state, exception));
    }
}
