using CrewBot.Storage.Outbox;

namespace CrewBot.Storage.Tests.Outbox;

public sealed class PostPumpFaultTests : PumpTest
{
    private const int Limit = 30_000;

    [Fact(Timeout = Limit)]
    public async Task Run_AttemptFails_TriesAgainAfterThePauseBeforeWhatFollows()
    {
        Sender.FailAt("trip-channel", new HttpRequestException("down"));
        await SayAsync("trip/1/card", "first");
        await SayAsync("trip/1/note", "second");
        await using var pump = Run();
        Assert.Equal("show alpha trip-channel first: down", await NextAsync());
        await SettledAsync("trip/1/card", post => post is { Attempts: 1 });
        await SayAsync("trip/1/more", "third");

        Advance(TimeSpan.FromSeconds(1));
        Assert.Equal("show alpha trip-channel first", await NextAsync());
        Assert.Equal("show alpha trip-channel second", await NextAsync());
        Assert.Equal("show alpha trip-channel third", await NextAsync());
    }

    [Fact(Timeout = Limit)]
    public async Task Run_AnswerIsLostAndMoreWasSaid_EndsWithOneMessageThatSaysTheLatest()
    {
        Sender.FailAt("trip-channel", ScriptedSender.LostAnswer);
        await SayAsync("trip/1/card", "3 come");
        await using var pump = Run();
        Assert.Equal("show alpha trip-channel 3 come: answer lost", await NextAsync());
        await SettledAsync("trip/1/card", post => post is { Attempts: 1 });
        await SayAsync("trip/1/card", "4 come");

        Advance(TimeSpan.FromSeconds(1));
        Assert.Equal("show alpha trip-channel 4 come", await NextAsync());
        Assert.Equal("edit alpha m1 4 come", await NextAsync());
        await SettledAsync("trip/1/card", post => post is { NextAt: null });
        Assert.Equal(["4 come"], Sender.Shown.Values);
    }

    [Fact(Timeout = Limit)]
    public async Task TakeBackAsync_AnswerWasLost_FindsTheMessageAndRemovesIt()
    {
        Sender.FailAt("trip-channel", ScriptedSender.LostAnswer);
        await SayAsync("trip/1/card", "3 come");
        await using var pump = Run();
        await NextAsync();
        await SettledAsync("trip/1/card", post => post is { Attempts: 1 });
        await TakeBackAsync("trip/1/card");

        Advance(TimeSpan.FromSeconds(1));
        await SettledAsync("trip/1/card", post => post is null);
        Assert.Empty(Sender.Shown);
    }

    [Fact(Timeout = Limit)]
    public async Task Run_OnePlaceStallsAndAnotherFails_TheOthersGoOn()
    {
        var stall = new TaskCompletionSource();
        Sender.StallAt("slow", stall.Task);
        Sender.FailAt("broken", [.. Enumerable.Repeat(new HttpRequestException("down"), 100)]);
        await SayAsync("a", "waits", place: "slow");
        await SayAsync("b", "fails", place: "broken");
        await SayAsync("c", "goes", place: "sound");
        await SayAsync("d", "goes too", place: "slow", crew: Bravo);
        await using var pump = Run();

        var told = new HashSet<string> { await NextAsync(), await NextAsync() };
        Assert.Equal(["show alpha broken fails: down", "show alpha sound goes"], told.Order());
        await SettledAsync("c", post => post is { NextAt: null });
        stall.SetResult();
        told = [await NextAsync(), await NextAsync()];
        Assert.Equal(["show alpha slow waits", "show bravo slow goes too"], told.Order());
    }

    [Fact(Timeout = Limit)]
    public async Task Run_PlatformWillNeverTakeIt_IsADeadLetterUntilItIsSaidAgain()
    {
        Sender.FailAt("trip-channel", new PostRefusedException("no such channel"));
        await SayAsync("trip/1/card", "bad");
        await SayAsync("trip/1/note", "good");
        await using var pump = Run();
        await NextAsync();
        Assert.Equal("show alpha trip-channel good", await NextAsync());

        await SettledAsync("trip/1/note", post => post is { NextAt: null });
        var dead = Assert.Single(await ReadAsync(Alpha, session => new PostRepository(session).DeadAsync()));
        Assert.Equal(("trip/1/card", 1, "no such channel"), (dead.Key, dead.Attempts, dead.Fault));
        Assert.Empty(await ReadAsync(Alpha, session => new PostRepository(session).PendingAsync()));

        await SayAsync("trip/1/card", "bad");
        Assert.Equal("show alpha trip-channel bad", await NextAsync());
        await SettledAsync("trip/1/card", post => post is { NextAt: null, Fault: null });
        Assert.Empty(await ReadAsync(Alpha, session => new PostRepository(session).DeadAsync()));
    }

    [Fact(Timeout = Limit)]
    public async Task Run_FailsEveryTime_IsGivenUpAfterTheLastAttempt()
    {
        Sender.FailAt("trip-channel", [.. Enumerable.Repeat(new HttpRequestException("down"), PostPump.MostAttempts)]);
        await SayAsync("trip/1/card", "never");
        await using var pump = Run();
        for (var attempt = 1; attempt <= PostPump.MostAttempts; attempt++)
        {
            await NextAsync();
            await SettledAsync("trip/1/card", post => post!.Attempts == attempt);
            Advance(PostPump.PauseAfter(attempt));
        }

        Assert.Single(await ReadAsync(Alpha, session => new PostRepository(session).DeadAsync()));
    }

    [Theory]
    [InlineData(1, 1)]
    [InlineData(2, 2)]
    [InlineData(4, 8)]
    [InlineData(9, 300)]
    [InlineData(30, 300)]
    public void PauseAfter_Attempts_DoublesUpToFiveMinutes(long attempts, double seconds) =>
        Assert.Equal(TimeSpan.FromSeconds(seconds), PostPump.PauseAfter(attempts));
}
