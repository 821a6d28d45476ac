using CrewBot.Storage.Outbox;

namespace CrewBot.Storage.Tests.Outbox;

public sealed class PostPumpTests : PumpTest
{
    private const int Limit = 30_000;

    [Fact(Timeout = Limit)]
    public async Task Run_PostsSaidBeforeAndWhileItRuns_ShowsEachOnceInOrder()
    {
        await SayAsync("trip/1/card", "first");
        await using var pump = Run();
        Assert.Equal("show alpha trip-channel first", await NextAsync());
        await SayAsync("trip/1/note", "second");
        await SayAsync("trip/1/more", "third");

        Assert.Equal("show alpha trip-channel second", await NextAsync());
        Assert.Equal("show alpha trip-channel third", await NextAsync());
        await SettledAsync("trip/1/more", post => post is { NextAt: null, Message.Id: "m3" });
        Assert.True(Sender.IsQuiet);
    }

    [Fact(Timeout = Limit)]
    public async Task SayAsync_KeySaidBefore_EditsTheMessageThatStands()
    {
        await using var pump = Run();
        await SayAsync("trip/1/card", "3 come");
        Assert.Equal("show alpha trip-channel 3 come", await NextAsync());
        await SayAsync("trip/1/card", "4 come", place: "another-channel");

        Assert.Equal("edit alpha m1 4 come", await NextAsync());
        await SayAsync("trip/1/card", "5 come");
        Assert.Equal("edit alpha m1 5 come", await NextAsync());
        var post = await SettledAsync("trip/1/card", post => post is { NextAt: null });
        Assert.Equal(("trip-channel", 3, 3), (post!.Place, post.Revision, post.ShownRevision));
    }

    [Fact(Timeout = Limit)]
    public async Task SayAsync_TheSameAgain_ChangesNothing()
    {
        await using var pump = Run();
        await SayAsync("trip/1/card", "3 come");
        await SettledAsync("trip/1/card", post => post is { NextAt: null });
        await SayAsync("trip/1/card", "3 come");

        Assert.Equal(1, (await FindAsync("trip/1/card"))!.Revision);
        Assert.Null((await FindAsync("trip/1/card"))!.NextAt);
    }

    [Fact(Timeout = Limit)]
    public async Task SayAsync_ManyTimesWithinTheGap_ShowsTheLatestAloneWhenTheGapIsOver()
    {
        var board = new PostManner { Gap = TimeSpan.FromSeconds(5) };
        await using var pump = Run();
        await SayAsync("derby/1/board", "Ana leads", manner: board);
        Assert.Equal("show alpha trip-channel Ana leads", await NextAsync());
        await SettledAsync("derby/1/board", post => post is { NextAt: null });
        for (var fish = 1; fish <= 20; fish++)
        {
            await SayAsync("derby/1/board", $"fish {fish}", manner: board);
        }

        Advance(TimeSpan.FromSeconds(4.9));
        await SayAsync("derby/1/note", "another post is not held up");
        Assert.Equal("show alpha trip-channel another post is not held up", await NextAsync());
        await SettledAsync("derby/1/note", post => post is { NextAt: null });
        Advance(TimeSpan.FromSeconds(0.1));
        Assert.Equal("edit alpha m1 fish 20", await NextAsync());
        await SettledAsync("derby/1/board", post => post is { NextAt: null });
        Assert.True(Sender.IsQuiet);
    }

    [Fact(Timeout = Limit)]
    public async Task SayAsync_DueInTheFuture_WaitsForItAcrossARestart()
    {
        await using (Run())
        {
            await SayAsync("trip/1/reminder", "at six", due: Morning.AddHours(3));
        }

        Assert.True(Sender.IsQuiet);
        await ReopenAsync();
        Advance(TimeSpan.FromHours(3) - TimeSpan.FromSeconds(5));
        await using var pump = Run();
        await SayAsync("trip/1/other", "now");
        Assert.Equal("show alpha trip-channel now", await NextAsync());
        await SettledAsync("trip/1/other", post => post is { NextAt: null });

        while (Sender.IsQuiet)
        {
            // Nobody rings: the pump must have set itself an alarm, at the latest now.
            Clock.Advance(TimeSpan.FromSeconds(5));
            await Task.Yield();
        }

        Assert.Equal("show alpha trip-channel at six", await NextAsync());
    }

    [Fact(Timeout = Limit)]
    public async Task Run_SaidAgain_IsANewMessageEachTimeUntilItIsSaidOtherwise()
    {
        var alarm = new PostManner { Notifies = true, Again = TimeSpan.FromMinutes(30) };
        await SayAsync("trip/1/overdue", "overdue", manner: alarm);
        await using var pump = Run();
        Assert.Equal("show alpha trip-channel overdue", await NextAsync());
        await SettledAsync("trip/1/overdue/again/2", post => post?.NextAt == Morning.AddMinutes(30));

        // Two rounds went by unsaid: one message stands for both, and the rhythm stays.
        Advance(TimeSpan.FromMinutes(70));
        Assert.Equal("show alpha trip-channel overdue", await NextAsync());
        await SettledAsync("trip/1/overdue/again/3", post => post?.NextAt == Morning.AddMinutes(90));
        await TakeBackAsync("trip/1/overdue/again/3");
        await SayAsync("trip/1/overdue", "back");

        Assert.Equal("edit alpha m1 back", await NextAsync());
        await SettledAsync("trip/1/overdue", post => post is { NextAt: null });
        Assert.Equal(
            ["trip/1/overdue", "trip/1/overdue/again/2"],
            (await ReadAsync(Alpha, session => new PostRepository(session).UnderAsync("trip/1/"))).Select(post => post.Key));
    }

    [Fact(Timeout = Limit)]
    public async Task Run_SaidAgainAndRefused_GetsItsNextChance()
    {
        Sender.FailAt("trip-channel", new PostRefusedException("no such channel"));
        await SayAsync("trip/1/overdue", "overdue", manner: new PostManner { Again = TimeSpan.FromMinutes(30) });
        await using var pump = Run();
        await NextAsync();
        await SettledAsync("trip/1/overdue/again/2", post => post is not null);

        Advance(TimeSpan.FromMinutes(30));
        Assert.Equal("show alpha trip-channel overdue", await NextAsync());
    }

    [Fact(Timeout = Limit)]
    public async Task RewordAsync_ShownPendingAndGivenUp_EditsWhatStandsAndShowsNothingMore()
    {
        await SayAsync("trip/1/card", "Hal comes");
        await SayAsync("trip/1/reminder", "Hal, at six", due: Morning.AddHours(3));
        Sender.FailAt("gone", new PostRefusedException("no such channel"));
        await SayAsync("trip/1/dead", "Hal is out", place: "gone");
        await using var pump = Run();
        await NextAsync();
        await NextAsync();
        await SettledAsync("trip/1/card", post => post is { Message: not null });
        await SettledAsync("trip/1/dead", post => post is { NextAt: null });

        await WriteAsync(Alpha, async session =>
        {
            var posts = new PostRepository(session);
            foreach (var post in await posts.ThatSayAsync("Hal"))
            {
                await posts.RewordAsync(post, post.Body.Replace("Hal", "somebody", StringComparison.Ordinal), Morning);
            }
        });

        Assert.Equal("edit alpha m1 somebody comes", await NextAsync());
        await SettledAsync("trip/1/card", post => post is { NextAt: null });
        Assert.True(Sender.IsQuiet);
        Assert.Equal(("somebody is out", true), ((await FindAsync("trip/1/dead"))!.Body, (await FindAsync("trip/1/dead"))!.NextAt is null));
        Advance(TimeSpan.FromHours(3));
        Assert.Equal("show alpha trip-channel somebody, at six", await NextAsync());
    }

    [Fact(Timeout = Limit)]
    public async Task TakeBackAsync_NotShownYet_IsNeverSaid()
    {
        await SayAsync("trip/1/overdue", "overdue!", due: Morning.AddHours(1));
        await TakeBackAsync("trip/1/overdue");

        Assert.Null(await FindAsync("trip/1/overdue"));
    }

    [Fact(Timeout = Limit)]
    public async Task TakeBackAsync_Shown_RemovesItAndSaidAgainItIsANewMessage()
    {
        await using var pump = Run();
        await SayAsync("trip/1/card", "3 come");
        Assert.Equal("show alpha trip-channel 3 come", await NextAsync());
        await SettledAsync("trip/1/card", post => post is { NextAt: null });
        await TakeBackAsync("trip/1/card");

        Assert.Equal("remove alpha m1", await NextAsync());
        await SettledAsync("trip/1/card", post => post is null);
        await SayAsync("trip/1/card", "3 come");
        Assert.Equal("show alpha trip-channel 3 come", await NextAsync());
        await SettledAsync("trip/1/card", post => post?.Message?.Id == "m2");
    }

    [Fact(Timeout = Limit)]
    public async Task WriteAsync_ChangeThatFails_LeavesNothingToSay()
    {
        await Assert.ThrowsAsync<InvalidOperationException>(() => WriteAsync(Alpha, async session =>
        {
            await new PostRepository(session).SayAsync("trip/1/card", "trip-channel", "never", Morning);
            throw new InvalidOperationException();
        }));

        Assert.Empty(await ReadAsync(Alpha, session => new PostRepository(session).PendingAsync()));
    }
}
