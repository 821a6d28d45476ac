using CrewBot.Storage.Connections;
using CrewBot.Storage.Outbox;
using Microsoft.Extensions.Logging.Abstractions;
using Microsoft.Extensions.Time.Testing;

namespace CrewBot.Storage.Tests.Outbox;

/// <summary>A pump that runs beside a test, on the test's clock.</summary>
public abstract class PumpTest : DatabaseTest
{
    protected static readonly DateTimeOffset Morning = new(2027, 1, 16, 14, 0, 0, TimeSpan.Zero);

    private protected FakeTimeProvider Clock { get; } = new(Morning);

    private protected ScriptedSender Sender { get; init; } = new();

    private protected Pumping Run() => new(Database, Sender, Clock);

    private protected Task SayAsync(
        string key, string body, string place = "trip-channel", DateTimeOffset? due = null, PostManner? manner = null, string crew = Alpha) =>
        WriteAsync(crew, session => new PostRepository(session).SayAsync(key, place, body, due ?? Clock.GetUtcNow(), manner));

    private protected Task TakeBackAsync(string key) => WriteAsync(Alpha, session => new PostRepository(session).TakeBackAsync(key));

    private protected Task<Post?> FindAsync(string key) => ReadAsync(Alpha, session => new PostRepository(session).FindAsync(key));

    private protected Task<string> NextAsync() => Sender.NextAsync(Cancellation);

    /// <summary>Lets time pass; the bell is for a pump that has read the clock and not yet set its alarm.</summary>
    private protected void Advance(TimeSpan time)
    {
        Clock.Advance(time);
        Database.PostBell.Ring();
    }

    /// <summary>Waits until a post has come to rest, however long its notes take.</summary>
    private protected async Task<Post?> SettledAsync(string key, Func<Post?, bool> isSo)
    {
        while (true)
        {
            var post = await FindAsync(key);
            if (isSo(post))
            {
                return post;
            }

            await Task.Yield();
            Cancellation.ThrowIfCancellationRequested();
        }
    }

    private protected sealed class Pumping : IAsyncDisposable
    {
        private readonly CancellationTokenSource _stop = new();
        private readonly Task _run;

        public Pumping(Database database, IPostSender sender, TimeProvider clock) =>
            _run = Task.Run(() => new PostPump(database, sender, clock, NullLogger<PostPump>.Instance).RunAsync(_stop.Token));

        public async ValueTask DisposeAsync()
        {
            await _stop.CancelAsync();
            await _run;
            _stop.Dispose();
        }
    }
}
