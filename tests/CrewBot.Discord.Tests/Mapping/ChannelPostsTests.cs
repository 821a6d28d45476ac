using CrewBot.Chat.Commands;
using CrewBot.Chat.Posts;
using CrewBot.Discord.StandIn;

namespace CrewBot.Discord.Tests.Mapping;

public sealed class ChannelPostsTests
{
    private static readonly string Place = StandInData.Id(StandInData.ChannelId);
    private static readonly Reply Report = new() { Headline = "Loon Basin: 8 in reported", Audience = Audience.Crew };

    private static CancellationToken Limit => TestContext.Current.CancellationToken;

    [Fact(Timeout = 30_000)]
    public async Task PostAsync_SameKeyTwice_ShowsOnce()
    {
        await using var stage = await RoomStage.OpenAsync(Limit);
        var first = await stage.Posts.PostAsync(Place, "relay-7", Report, notifies: false, Limit);
        var second = await stage.Posts.PostAsync(Place, "relay-7", Report, notifies: false, Limit);

        Assert.Equal(first, second);
        Assert.Equal(1, stage.Server.MessagesCreated);
        stage.CheckBodies();
    }

    [Fact(Timeout = 30_000)]
    public async Task PostAsync_LongKey_FitsTheNonceAndStaysTheSame()
    {
        await using var stage = await RoomStage.OpenAsync(Limit);
        var key = "reminder/crew-1100000000000000001/trip-42/evening-before";
        await stage.Posts.PostAsync(Place, key, Report, notifies: false, Limit);
        await stage.Posts.PostAsync(Place, key, Report, notifies: false, Limit);

        Assert.Equal(1, stage.Server.MessagesCreated);
        stage.CheckBodies();
    }

    [Fact(Timeout = 30_000)]
    public async Task Posts_AreEditedThreadedAndDeleted()
    {
        await using var stage = await RoomStage.OpenAsync(Limit);
        var posted = await stage.Posts.PostAsync(Place, "board-1", Report, notifies: false, Limit);
        await stage.Posts.EditAsync(posted, Report with { Headline = "Loon Basin: 9 in reported" }, Limit);
        var thread = await stage.Posts.OpenThreadAsync(posted, new string('t', 300), Limit);
        await stage.Posts.PostAsync(thread, "board-1-note", Report, notifies: false, Limit);
        await stage.Posts.DeleteAsync(posted, Limit);

        stage.Server.Faults.Next("channels/", CannedReply.Refusal(404, 10008, "Unknown Message"));
        await stage.Posts.DeleteAsync(posted, Limit);
        stage.Server.Faults.Next("threads", CannedReply.Refusal(400, 160004, "A thread has already been created"));
        Assert.Equal(posted.Id, await stage.Posts.OpenThreadAsync(posted, "again", Limit));
        stage.CheckBodies();
    }

    [Theory(Timeout = 30_000)]
    [InlineData(true, null)]
    [InlineData(false, 1 << 12)] // SUPPRESS_NOTIFICATIONS of the published message flags
    public async Task PostAsync_OnlyWhatNotifies_MayRing(bool notifies, int? flags)
    {
        await using var stage = await RoomStage.OpenAsync(Limit);
        await stage.Posts.PostAsync(Place, "overdue-1", Report, notifies, Limit);

        var sent = (await stage.Server.NextRequestAsync("/messages", Limit)).Json!;
        Assert.Equal(flags, sent["flags"]?.GetValue<int>());
        Assert.Empty(sent["allowed_mentions"]!["parse"]!.AsArray());
        stage.CheckBodies();
    }

    [Fact(Timeout = 30_000)]
    public async Task PostAsync_ToAPerson_OpensTheirChannelOnce()
    {
        await using var stage = await RoomStage.OpenAsync(Limit);
        var person = $"@{StandInData.Id(StandInData.ChannelId)}";
        var first = await stage.Posts.PostAsync(person, "dm-1", Report, notifies: false, Limit);
        var second = await stage.Posts.PostAsync(person, "dm-2", Report, notifies: false, Limit);

        Assert.Equal(first.Place, second.Place);
        Assert.NotEqual(person[1..], first.Place);
        Assert.Single(stage.Server.Requests, request => request.Path == "users/@me/channels");
        await stage.Posts.EditAsync(first, Report, Limit);
        await stage.Posts.DeleteAsync(first, Limit);
    }

    [Fact(Timeout = 30_000)]
    public async Task EditAsync_SomebodyRemovedIt_SaysThatItIsGone()
    {
        await using var stage = await RoomStage.OpenAsync(Limit);
        var posted = await stage.Posts.PostAsync(Place, "board-1", Report, notifies: false, Limit);
        stage.Server.Faults.Next("channels/", CannedReply.Refusal(404, 10008, "Unknown Message"));

        await Assert.ThrowsAsync<PostGoneException>(() => stage.Posts.EditAsync(posted, Report, Limit));
    }

    [Fact(Timeout = 30_000)]
    public async Task PostAsync_NoRightToWriteThere_IsImpossible()
    {
        await using var stage = await RoomStage.OpenAsync(Limit);
        stage.Server.Faults.Next("channels/", CannedReply.Refusal(403, 50013, "Missing Permissions"));

        var refusal = await Assert.ThrowsAsync<PostImpossibleException>(
            () => stage.Posts.PostAsync(Place, "board-1", Report, notifies: false, Limit));
        Assert.Contains("Missing Permissions", refusal.Message, StringComparison.Ordinal);
    }

    [Fact(Timeout = 30_000)]
    public async Task PostAsync_PlaceOfAnotherPlatform_IsRefused()
    {
        await using var stage = await RoomStage.OpenAsync(Limit);
        await Assert.ThrowsAsync<PostImpossibleException>(() => stage.Posts.PostAsync("the terminal", "k", Report, notifies: false, Limit));
    }
}
