using CrewBot.Chat.Commands;
using CrewBot.Chat.Posts;
using CrewBot.Storage.Outbox;
using CrewBot.Worker.Background;
using Microsoft.Extensions.Logging.Abstractions;
using Microsoft.Extensions.Time.Testing;

namespace CrewBot.Worker.Tests;

/// <summary>The bot, started on a file for as long as it has something to say.</summary>
internal static class PumpRun
{
    /// <summary>Starts it at an instant, and stops it when nothing that is due is left unsaid.</summary>
    public static async Task UntilQuietAsync(string file, string crew, IChatPost room, DateTimeOffset now)
    {
        var limit = TestContext.Current.CancellationToken;
        var clock = new FakeTimeProvider(now);
        await using var book = CrewBook.At(file);
        var database = await book.DatabaseAsync(limit);
        using var stop = CancellationTokenSource.CreateLinkedTokenSource(limit);
        var pump = Task.Run(() => new PostPump(database, new RoomPosts([room], clock), clock, NullLogger<PostPump>.Instance).RunAsync(stop.Token), limit);
        while ((await database.ReadAsync(crew, session => new PostRepository(session).PendingAsync(), limit)).Any(post => post.NextAt <= clock.GetUtcNow()))
        {
            await Task.Yield();
        }

        await stop.CancelAsync();
        await pump;
    }
}
