using CrewBot.Chat.Commands;
using CrewBot.Storage.Outbox;

namespace CrewBot.Chat.Tests.Ice;

public sealed class IceRelayTests
{
    private const string Report = "/ice report water:\"Loon Basin\" spot:\"north bay\" clear:5in note:\"by the red shack\"";

    [Fact]
    public async Task Report_OwnAndAgreedCrews_TellsEachChannelOnceAndHidesTheSpotFromPartners()
    {
        await using var room = await AgreedAsync();

        await room.SayAsync(Report);

        var posts = await PostsAsync(room);
        Assert.Equal(["bravo-ice", "charlie-ice", "tamarack-ice"], posts.Select(post => post.Place).Order());
        Assert.All(posts, post => Assert.Equal($"ice/1/{post.Place}", post.Key));
        Assert.All(posts.Where(post => post.Place != "tamarack-ice"), post =>
        {
            Assert.DoesNotContain("north bay", post.Body, StringComparison.Ordinal);
            Assert.DoesNotContain("red shack", post.Body, StringComparison.Ordinal);
        });
        Assert.Contains("north bay", posts.Single(post => post.Place == "tamarack-ice").Body, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Correct_AReportInThreeCrewsChannels_ChangesAllThreeCopies()
    {
        await using var room = await AgreedAsync();
        await room.SayAsync(Report);

        var answer = await room.SayAsync("/ice correct report:1 reason:\"read the tape wrong\" clear:4in");

        Assert.Contains(answer.Lines, line => line.StartsWith("3 copies are", StringComparison.Ordinal));
        var posts = await PostsAsync(room);
        Assert.Equal(3, posts.Count);
        Assert.All(posts, post =>
        {
            var card = ReplyJson.Read(post.Body);
            Assert.Contains("5 in (12.7 cm) clear", Assert.Single(card.Struck), StringComparison.Ordinal);
            Assert.Contains("Reason: read the tape wrong", card.Lines);
            Assert.Contains(card.Lines, line => line.StartsWith("4 in (10.1 cm) clear", StringComparison.Ordinal));
        });
    }

    [Fact]
    public async Task Withdraw_AReport_StrikesEveryCopyThrough()
    {
        await using var room = await AgreedAsync();
        await room.SayAsync(Report);

        await room.SayAsync("/ice withdraw report:1 reason:\"wrong lake\"");

        var posts = await PostsAsync(room);
        Assert.Equal(3, posts.Count);
        Assert.All(posts, post => Assert.DoesNotContain(ReplyJson.Read(post.Body).Lines, line => line.Contains("5 in", StringComparison.Ordinal)));
        Assert.Contains("withdrawn already", (await room.SayAsync("/ice withdraw report:1 reason:again")).Problem, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("hazard:\"broke through\"", true)]
    [InlineData("hazard:\"open water\"", true)]
    [InlineData("hazard:slush", false)]
    [InlineData("clear:6in", false)]
    public async Task Report_OnlyUrgentHazards_Notify(string what, bool notifies)
    {
        await using var room = await AgreedAsync();

        await room.SayAsync($"/ice report water:\"Loon Basin\" {what}");

        Assert.All(await PostsAsync(room), post => Assert.Equal(notifies, post.Manner.Notifies));
    }

    [Fact]
    public async Task Report_CrewsThatOnlyOneSideNamed_AreToldNothing()
    {
        await using var room = await AgreedAsync();
        room.Place = "delta-ice";
        await room.SayAsync("/crew setup water:\"Loon Basin\"", crew: "delta");
        await room.SayAsync("/ice follow water:\"Loon Basin\"", crew: "delta");
        await room.SayAsync("/ice share crew:tamarack", crew: "delta");

        await room.SayAsync(Report);

        Assert.DoesNotContain(await PostsAsync(room), post => post.Place == "delta-ice");
        await room.SayAsync("/ice share crew:bravo end:yes");
        await room.SayAsync(Report);
        Assert.DoesNotContain(await PostsAsync(room), post => post.Key == "ice/2/bravo-ice");
    }

    [Fact]
    public async Task Report_CrewsThatShareInARing_SayItOnceAndNeverAgain()
    {
        await using var room = await AgreedAsync();
        await room.SayAsync("/ice share crew:charlie", crew: "bravo");
        await room.SayAsync("/ice share crew:bravo", crew: "charlie");

        await room.SayAsync(Report);

        // A relay is a post of the crew that measured; nothing of it lies in another crew's book to be relayed on.
        Assert.Equal(3, (await PostsAsync(room)).Count);
        Assert.Empty(await PostsAsync(room, "bravo"));
        Assert.Empty(await PostsAsync(room, "charlie"));
    }

    [Fact]
    public async Task Report_DeliveredTwice_IsFiledAndToldOnce()
    {
        await using var room = await AgreedAsync();

        var first = await room.SayAsync(Report, id: "once");
        var second = await room.SayAsync(Report, id: "once");

        Assert.Equal(first.Headline, second.Headline);
        Assert.Equal(3, (await PostsAsync(room)).Count);
    }

    private static async Task<CrewRoom> AgreedAsync()
    {
        var room = new CrewRoom();
        foreach (var crew in (string[])["tamarack", "bravo", "charlie"])
        {
            room.Place = $"{crew}-ice";
            await room.SayAsync("/crew setup water:\"Loon Basin\"", crew: crew);
            Assert.Null((await room.SayAsync("/ice follow water:\"Loon Basin\"", crew: crew)).Problem);
        }

        foreach (var partner in (string[])["bravo", "charlie"])
        {
            await room.SayAsync($"/ice share crew:{partner}");
            Assert.Contains("are shared", (await room.SayAsync("/ice share crew:tamarack", crew: partner)).Headline, StringComparison.Ordinal);
        }

        return room;
    }

    private static async Task<IReadOnlyList<Post>> PostsAsync(CrewRoom room, string crew = "tamarack")
    {
        IReadOnlyList<Post> posts = [];
        await room.WriteAsync(async session => posts = await new PostRepository(session).PendingAsync(), crew);
        return posts;
    }
}
