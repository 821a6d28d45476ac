using CrewBot.Chat.Commands;
using CrewBot.Storage.Outbox;

namespace CrewBot.Chat.Tests.Ice;

/// <summary>Passing a post on: read, shown, corrected, and only then filed.</summary>
public sealed class RelayIcePostTests
{
    private const string Post = "Loon Basin: 4-5 inches of good ice off the landing this morning, maybe 6 by the island. Slush by the narrows";

    private static readonly Dictionary<string, string> Given = new()
    {
        ["author"] = "Nils",
        ["written"] = "2027-01-16T19:00:00Z",
        ["link"] = "https://chat.example/posts/7",
    };

    [Fact]
    public async Task Relay_APost_ShowsWhatItReadsAndFilesNothing()
    {
        await using var room = await FollowedAsync();

        var read = await room.CallAsync("ice relay", Said(Post.Replace("maybe 6", "maybe 6 inches", StringComparison.Ordinal)), Given);

        Assert.Equal("Read out of Nils's post; nothing is filed yet", read.Headline);
        Assert.Equal(["landing: 4in.", "island: 6in, guessed.", "narrows: slush.", "Water: Loon Basin. Measured: 2027-01-16, from 00:00 on."], read.Lines);
        Assert.Empty(await PostsAsync(room));
        var form = Assert.Single(read.Actions, action => action.Kind is ActionKind.Form);
        Assert.Equal(["water", "found", "when"], form.Fields);
        Assert.Equal("landing: 4in; island: 6in, guessed; narrows: slush", form.Options["found"]);
        Assert.Equal("Nils", form.Options["author"]);
        Assert.StartsWith("Loon Basin: 4-5 inches", form.Options["quote"], StringComparison.Ordinal);
    }

    [Fact]
    public async Task Relay_FormSent_FilesEachPlaceAndTellsTheFollowersWhoWroteItWhen()
    {
        await using var room = await FollowedAsync();
        var read = await room.CallAsync("ice relay", Said("4-5 inches of good ice off the landing, slush by the narrows"), Given);
        var form = Assert.Single(read.Actions, action => action.Kind is ActionKind.Form);
        Assert.DoesNotContain("water", form.Options.Keys);

        var filed = await room.CallAsync(form.Path, new Dictionary<string, string>(form.Options) { ["water"] = "Loon Basin" }, new Dictionary<string, string>());

        Assert.Null(filed.Problem);
        Assert.Equal("Passed on from Nils's post: 2 reports", filed.Headline);
        Assert.Contains("Nobody said when it was measured, so it supports no answer.", filed.Lines);
        var posts = await PostsAsync(room);
        Assert.Equal(["ice/1/tamarack-ice", "ice/2/tamarack-ice"], posts.Select(post => post.Key));
        var card = ReplyJson.Read(posts[0].Body);
        Assert.Equal("Ice report: Loon Basin, landing", card.Headline);
        Assert.Contains(card.Lines, line => line.StartsWith("4 in (10.1 cm), kind not said", StringComparison.Ordinal));
        Assert.Contains(card.Lines, line => line.Contains("By Nils, passed on by Ana; nobody said when it was measured", StringComparison.Ordinal));
        Assert.Contains(card.Lines, line => line.Contains("slush by the narrows (written 2027-01-16 19:00)", StringComparison.Ordinal) && line.Contains("https://chat.example/posts/7", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Relay_OnePostByTwoMembers_IsToldOnce()
    {
        await using var room = await FollowedAsync();
        var read = await room.CallAsync("ice relay", Said(Post), Given);
        var form = Assert.Single(read.Actions, action => action.Kind is ActionKind.Form);
        await room.CallAsync(form.Path, Corrected(form, "landing: 4in"), new Dictionary<string, string>());
        room.Now += TimeSpan.FromMinutes(3);

        var again = await room.CallAsync(form.Path, Corrected(form, "landing: 4in"), new Dictionary<string, string>());

        Assert.Contains("passed on already, as report #1", again.Problem, StringComparison.Ordinal);
        Assert.Single(await PostsAsync(room));
    }

    [Fact]
    public async Task Relay_HearsayAndGuesses_SupportNoAnswer()
    {
        await using var room = await FollowedAsync();

        await room.SayAsync("/ice relay author:Nils written:\"1h ago\" water:\"Loon Basin\" when:\"2h ago\" found:\"landing: 12in clear, heard\"");

        var carry = await room.SayAsync("/ice carry water:\"Loon Basin\" spot:landing people:1 warmest:20F");
        Assert.DoesNotContain(carry.Figures, figure => figure.Key == "ice.effective");
        Assert.Contains("not measured", ReplyJson.Read(Assert.Single(await PostsAsync(room)).Body).Lines.Single(line => line.StartsWith("By Nils", StringComparison.Ordinal)), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Relay_OnePlaceUnfit_FilesNone()
    {
        await using var room = await FollowedAsync();

        var refused = await room.SayAsync("/ice relay author:Nils water:\"Loon Basin\" found:\"narrows: open water; landing: 5\"");

        Assert.Contains("unit", refused.Problem, StringComparison.Ordinal);
        Assert.Empty(await PostsAsync(room));
    }

    [Fact]
    public async Task Relay_LayersAtOnePlace_AreOneHoleAndOtherwiseTheLeastStands()
    {
        await using var room = await FollowedAsync();

        var layers = await room.CallAsync("ice relay", Said("2 inches white over 4 inches clear at the weed line"), Given);
        var holes = await room.CallAsync("ice relay", Said("9 inches of clear ice at the weed line. 5 inches of clear ice at the weed line"), Given);

        Assert.StartsWith("weed line: 2in white 4in clear", layers.Lines[0], StringComparison.Ordinal);
        Assert.Equal("weed line: 5in clear.", holes.Lines[0]);
    }

    [Theory]
    [InlineData("jk theres no 12 inches of ice lol just kidding", "Nothing to pass on")]
    [InlineData("caught a 22 inch pike", "Nothing to pass on")]
    [InlineData("5in clear, total 3in", "less ice in all than in its parts")]
    public async Task Relay_NothingToPassOn_RefusesInALine(string post, string says)
    {
        await using var room = await FollowedAsync();

        var refused = await room.CallAsync("ice relay", Said(post), Given);

        Assert.Contains(says, refused.Problem, StringComparison.Ordinal);
        Assert.DoesNotContain('\n', refused.Problem!);
    }

    [Fact]
    public async Task Relay_EmptyPost_RefusesInALine()
    {
        await using var room = await FollowedAsync();

        Assert.Contains("no text in that post", (await room.CallAsync("ice relay", new Dictionary<string, string>(), Given)).Problem, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Relay_UnitMissing_AsksWhichAndNeverGuesses()
    {
        await using var room = await FollowedAsync();

        var read = await room.CallAsync("ice relay", Said("got 5 of good ice off the point"), Given);
        var form = Assert.Single(read.Actions);
        var sent = await room.CallAsync(form.Path, new Dictionary<string, string>(form.Options) { ["water"] = "Loon Basin" }, new Dictionary<string, string>());

        Assert.Equal(ActionKind.Form, form.Kind);
        Assert.Equal("point: 5 which unit?.", read.Lines[0]);
        Assert.Contains("unit", sent.Problem, StringComparison.Ordinal);
        Assert.Empty(await PostsAsync(room));
    }

    [Fact]
    public async Task Relay_FourThousandCharacters_AreReadAndQuotedShort()
    {
        await using var room = await FollowedAsync();
        var post = string.Concat(Enumerable.Repeat("What a great day it was with all of the kids and the dog. ", 68)) + "5 inches of clear ice off the point.";

        var read = await room.CallAsync("ice relay", Said(post), Given);

        Assert.Equal("point: 5in clear.", read.Lines[0]);
        Assert.Equal(300, read.Actions[0].Options["quote"].Length);
        Assert.Contains("too long", (await room.CallAsync("ice relay", Said(new string('x', 4001)), Given)).Problem, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Relay_TwoWatersInOnePost_KeepsEachWithItsPlace()
    {
        await using var room = await FollowedAsync();
        await room.SayAsync("/crew setup water:\"Tamarack Bay\"");

        var read = await room.CallAsync("ice relay", Said("7 inches on Loon Basin. 5 inches on Tamarack Bay"), Given);
        var form = Assert.Single(read.Actions, action => action.Kind is ActionKind.Form);
        var filed = await room.CallAsync(form.Path, form.Options, new Dictionary<string, string>());

        Assert.Equal("Loon Basin: 7in; Tamarack Bay: 5in", form.Options["found"]);
        Assert.Contains(filed.Lines, line => line.StartsWith("#2 Tamarack Bay, no spot named: 5 in", StringComparison.Ordinal));
    }

    private static Dictionary<string, string> Said(string post) => new() { ["post"] = post };

    private static Dictionary<string, string> Corrected(ReplyAction form, string found) => new(form.Options) { ["found"] = found };

    private static async Task<CrewRoom> FollowedAsync()
    {
        var room = new CrewRoom { Place = "tamarack-ice" };
        await room.SayAsync("/crew setup water:\"Loon Basin\"");
        await room.SayAsync("/ice follow water:\"Loon Basin\"");
        return room;
    }

    private static async Task<IReadOnlyList<Post>> PostsAsync(CrewRoom room)
    {
        IReadOnlyList<Post> posts = [];
        await room.WriteAsync(async session => posts = await new PostRepository(session).PendingAsync());
        return posts;
    }
}
