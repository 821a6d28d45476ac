using CrewBot.Chat.Commands;
using CrewBot.Discord.StandIn;
using CrewBot.Discord.Tests.Fakes;
using static CrewBot.Discord.StandIn.InteractionMaker;

namespace CrewBot.Discord.Tests.Mapping;

/// <summary>Answers that take longer than the platform waits, or that nobody waits for any more.</summary>
public sealed class RoomDeferralTests
{
    private static CancellationToken Limit => TestContext.Current.CancellationToken;

    [Fact(Timeout = 30_000)]
    public async Task Command_TakesLongerThanASecond_IsDeferredThenEdited()
    {
        var clock = new HurriedClock(factor: 10);
        await using var stage = await RoomStage.OpenAsync(Limit, clock);
        var finish = new TaskCompletionSource<Reply>();
        stage.Commands.Work = (_, _) => finish.Task;
        var deferral = await stage.AskAsync(stage.Make.Command("test", Subcommand("try")), Limit);
        Assert.Equal("""{"type":5,"data":{"flags":64}}""", deferral.ToJsonString());

        finish.SetResult(new Reply { Headline = "At last", Lines = ["It took a while."] });
        var edit = await stage.Server.NextRequestAsync("messages/@original", Limit);
        Assert.Equal("PATCH", edit.Method);
        Assert.Equal("At last", edit.Json!["embeds"]![0]!["title"]!.GetValue<string>());
        stage.CheckBodies();
    }

    [Fact(Timeout = 30_000)]
    public async Task Command_BlocksItsThread_IsDeferredAllTheSame()
    {
        await using var stage = await RoomStage.OpenAsync(Limit, new HurriedClock(factor: 10));
        using var finish = new ManualResetEventSlim();
        stage.Commands.Work = (_, token) =>
        {
            finish.Wait(token);
            return Task.FromResult(new Reply { Headline = "Awake" });
        };
        var deferral = await stage.AskAsync(stage.Make.Command("test", Subcommand("try")), Limit);
        finish.Set();

        Assert.Equal(5, deferral["type"]!.GetValue<int>());
        await stage.Server.NextRequestAsync("messages/@original", Limit);
    }

    [Fact(Timeout = 30_000)]
    public async Task Command_DeferredAndMeantForTheCrew_IsPostedBesideThePrivateNote()
    {
        await using var stage = await RoomStage.OpenAsync(Limit, new HurriedClock(factor: 10));
        var finish = new TaskCompletionSource<Reply>();
        stage.Commands.Work = (_, _) => finish.Task;
        await stage.AskAsync(stage.Make.Command("test", Subcommand("try")), Limit);
        finish.SetResult(new Reply { Headline = "Logged: walleye", Audience = Audience.Crew });

        var post = await stage.Server.NextRequestAsync("webhooks/", Limit);
        Assert.Equal("POST", post.Method);
        Assert.Null(post.Json!["flags"]);
        var note = await stage.Server.NextRequestAsync("messages/@original", Limit);
        Assert.Contains("Posted", note.Json!["embeds"]![0]!["description"]!.GetValue<string>(), StringComparison.Ordinal);
        stage.CheckBodies();
    }

    [Theory(Timeout = 30_000)]
    [InlineData(true)]
    [InlineData(false)]
    public async Task Command_SentWhileTheConnectionWasGone_ChangesSomethingOnlyIfSomebodyStillWaits(bool waits)
    {
        using var file = new CrewFile();
        await using var stage = await RoomStage.OpenAsync(Limit, database: file.Path);
        await stage.AskAsync(stage.Log("burbot"), Limit);
        var missed = stage.Log("walleye");
        if (!waits)
        {
            stage.Server.Faults.Next($"interactions/{missed["id"]}", CannedReply.Refusal(404, 10062, "Unknown interaction"));
        }

        var socket = stage.Server.LatestSocket!;
        socket.Session!.Add("INTERACTION_CREATE", missed.ToJsonString());
        socket.Cut();
        await stage.AgainAsync(Limit);
        await (waits
            ? (Task)stage.Server.NextRequestAsync($"{missed["token"]}/messages/@original", Limit)
            : stage.Logs.LineAsync("could not defer", Limit));

        var list = await stage.AskAsync(stage.Make.Command("catch", Subcommand("list")), Limit);
        Assert.Equal(waits, list.ToJsonString().Contains("alleye", StringComparison.Ordinal));
    }

    [Fact(Timeout = 30_000)]
    public async Task Stop_WorkIsAcknowledged_FinishesIt()
    {
        await using var stage = await RoomStage.OpenAsync(Limit, new HurriedClock(factor: 10));
        var finish = new TaskCompletionSource<Reply>();
        stage.Commands.Work = (_, _) => finish.Task;
        await stage.AskAsync(stage.Make.Command("test", Subcommand("try")), Limit);

        await stage.StopAsync();
        await stage.Server.LatestSocket!.Ended;
        Assert.False(stage.Run.IsCompleted);
        finish.SetResult(new Reply { Headline = "Just in time" });
        await stage.Server.NextRequestAsync("messages/@original", Limit);
        await stage.Run;
        Assert.Equal(4000, stage.Server.LatestSocket!.ClientCloseCode);
    }
}
