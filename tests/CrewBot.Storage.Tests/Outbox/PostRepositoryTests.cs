using CrewBot.Storage.Outbox;

namespace CrewBot.Storage.Tests.Outbox;

public sealed class PostRepositoryTests : PumpTest
{
    [Fact]
    public async Task FindAsync_PostWithEverything_ComesBackAsItWasSaid()
    {
        var manner = new PostManner { Notifies = true, LateLine = "(late: was due 16:30)", Gap = TimeSpan.FromSeconds(5) };
        await SayAsync("trip/1/overdue", "overdue", place: "@7", due: Morning.AddHours(2), manner: manner);

        var post = (await FindAsync("trip/1/overdue"))!;

        Assert.Equal(("@7", "overdue", 1, Morning.AddHours(2), manner), (post.Place, post.Body, post.Revision, post.DueAt, post.Manner));
        Assert.Equal(Morning.AddHours(2), post.NextAt);
        Assert.Null(post.Message);
        Assert.True(post.Nonce.Length <= 25);
    }

    [Fact]
    public async Task PendingAsync_SeveralSaid_ListsThemByTheirDueTime()
    {
        await SayAsync("later", "2", due: Morning.AddHours(2));
        await SayAsync("sooner", "1", due: Morning.AddHours(1));

        Assert.Equal(["sooner", "later"], (await ReadAsync(Alpha, session => new PostRepository(session).PendingAsync())).Select(post => post.Key));
    }

    [Fact]
    public async Task ForgetAsync_ShownLongAgo_GoesAndWhatIsStillToBeSaidStays()
    {
        await SayAsync("shown", "1");
        await using (Run())
        {
            await SettledAsync("shown", post => post is { NextAt: null });
        }

        await SayAsync("waiting", "2");
        await WriteAsync(Alpha, session => new PostRepository(session).ForgetAsync(Morning.AddDays(1)));

        Assert.Null(await FindAsync("shown"));
        Assert.NotNull(await FindAsync("waiting"));
    }
}
