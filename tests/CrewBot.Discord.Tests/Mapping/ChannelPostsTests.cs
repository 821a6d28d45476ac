using CrewBot.Chat.Commands;
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
        var first = await stage.Posts.PostAsync(Place, "relay-7", Report, Limit);
        var second = await stage.Posts.PostAsync(Place, "relay-7", Report, Limit);

        Assert.Equal(first, second);
        Assert.Equal(1, stage.Server.MessagesCreated);
        stage.CheckBodies();
    }

    [Fact(Timeout = 30_000)]
    public async Task PostAsync_LongKey_FitsTheNonceAndStaysTheSame()
    {
        await using var stage = await RoomStage.OpenAsync(Limit);
        var key = "reminder/crew-1100000000000000001/trip-42/evening-before";
        await stage.Posts.PostAsync(Place, key, Report, Limit);
        await stage.Posts.PostAsync(Place, key, Report, Limit);

        Assert.Equal(1, stage.Server.MessagesCreated);
        stage.CheckBodies();
    }

    [Fact(Timeout = 30_000)]
    public async Task Posts_AreEditedThreadedAndDeleted()
    {
        await using var stage = await RoomStage.OpenAsync(Limit);
        var posted = await stage.Posts.PostAsync(Place, "board-1", Report, Limit);
        await stage.Posts.EditAsync(posted, Report with { Headline = "Loon Basin: 9 in reported" }, Limit);
        var thread = await stage.Posts.OpenThreadAsync(posted, new string('t', 300), Limit);
        await stage.Posts.PostAsync(thread, "board-1-note", Report, Limit);
        await stage.Posts.DeleteAsync(posted, Limit);

        stage.Server.Faults.Next("channels/", CannedReply.Refusal(404, 10008, "Unknown Message"));
        await stage.Posts.DeleteAsync(posted, Limit);
        stage.Server.Faults.Next("threads", CannedReply.Refusal(400, 160004, "A thread has already been created"));
        Assert.Equal(posted.Id, await stage.Posts.OpenThreadAsync(posted, "again", Limit));
        stage.CheckBodies();
    }

    [Fact(Timeout = 30_000)]
    public async Task PostAsync_PlaceOfAnotherPlatform_IsRefused()
    {
        await using var stage = await RoomStage.OpenAsync(Limit);
        await Assert.ThrowsAsync<ArgumentException>(() => stage.Posts.PostAsync("the terminal", "k", Report, Limit));
    }
}
