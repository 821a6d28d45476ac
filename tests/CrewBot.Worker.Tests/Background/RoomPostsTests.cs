using CrewBot.Chat.Commands;
using CrewBot.Chat.Posts;
using CrewBot.Storage.Outbox;
using CrewBot.Worker.Background;
using Microsoft.Extensions.Time.Testing;

namespace CrewBot.Worker.Tests.Background;

public sealed class RoomPostsTests
{
    private static readonly DateTimeOffset Due = new(2027, 1, 16, 22, 30, 0, TimeSpan.Zero);
    private static readonly Post Overdue = new("trip/1/overdue", "7", ReplyJson.Write(new Reply { Headline = "Bo is overdue", Lines = ["Call him."] }), 2, Due)
    {
        Nonce = "n1",
        Manner = new PostManner { Notifies = true, LateLine = "(late: was due 16:30)" },
    };

    private static CancellationToken Limit => TestContext.Current.CancellationToken;

    [Theory]
    [InlineData(0, "Call him.")]
    [InlineData(5, "Call him.")]
    [InlineData(6, "(late: was due 16:30)|Call him.")]
    public async Task ShowAsync_LongAfterItWasDue_SaysSo(int minutes, string lines)
    {
        var room = new ListeningRoom("7");

        await new RoomPosts([room], At(minutes)).ShowAsync("crew", Overdue, Limit);

        Assert.Equal($"post 7 n1 {lines} notifies", Assert.Single(room.Heard));
    }

    [Fact]
    public async Task EditAsync_SomebodyRemovedIt_PostsItAgainUnderAnotherName()
    {
        var room = new ListeningRoom("7") { IsCleared = true };

        var message = await new RoomPosts([room], At(0)).EditAsync("crew", Overdue, new PostMessage("7", "m1"), Limit);

        Assert.Equal("n1/2", message.Id);
    }

    [Fact]
    public async Task ShowAsync_TwoRooms_GoesToTheOneThatReachesThePlace()
    {
        var (other, room) = (new ListeningRoom("room"), new ListeningRoom("7"));
        var posts = new RoomPosts([other, room], At(0));

        await posts.ShowAsync("crew", Overdue, Limit);

        Assert.Empty(other.Heard);
        Assert.Single(room.Heard);
        Assert.False(posts.Reaches("crew", "elsewhere"));
    }

    [Fact]
    public async Task ShowAsync_ImpossibleThere_IsRefusedForGood()
    {
        var room = new ListeningRoom("7") { Fault = new PostImpossibleException("no such channel") };

        var refusal = await Assert.ThrowsAsync<PostRefusedException>(() => new RoomPosts([room], At(0)).ShowAsync("crew", Overdue, Limit));
        Assert.Equal("no such channel", refusal.Message);
    }

    private static FakeTimeProvider At(int minutes) => new(Due.AddMinutes(minutes));

    private sealed class ListeningRoom(string place) : IChatPost
    {
        public List<string> Heard { get; } = [];

        public bool IsCleared { get; init; }

        public Exception? Fault { get; init; }

        public bool Reaches(string crew, string where) => where == place;

        public Task<Posted> PostAsync(string where, string key, Reply reply, bool notifies, CancellationToken cancellationToken)
        {
            Heard.Add($"post {where} {key} {string.Join('|', reply.Lines)}{(notifies ? " notifies" : "")}");
            return Fault is null ? Task.FromResult(new Posted(where, key)) : Task.FromException<Posted>(Fault);
        }

        public Task EditAsync(Posted posted, Reply reply, CancellationToken cancellationToken) =>
            IsCleared ? Task.FromException(new PostGoneException("Unknown Message")) : Task.CompletedTask;

        public Task DeleteAsync(Posted posted, CancellationToken cancellationToken) => Task.CompletedTask;

        public Task<string> OpenThreadAsync(Posted under, string name, CancellationToken cancellationToken) =>
            Task.FromResult(under.Id);
    }
}
