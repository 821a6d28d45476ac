using System.Text;
using System.Text.Json;
using CrewBot.Chat.Commands;
using CrewBot.Storage.Outbox;

namespace CrewBot.Chat.Tests.Privacy;

public sealed class HandlePrivacyTests : IAsyncDisposable
{
    private const string Name = "Annabel Quist";

    private readonly CrewRoom _room = new();

    [Fact]
    public async Task Show_AfterAnOuting_CountsWhatIsHeld()
    {
        await OutingAsync();

        var reply = await _room.SayAsync("crew privacy", Name);

        Assert.Contains("fish: 2", reply.Lines[0], StringComparison.Ordinal);
        Assert.Contains("corrections: 1", reply.Lines[0], StringComparison.Ordinal);
        Assert.Contains("times with lines down: 1", reply.Lines[0], StringComparison.Ordinal);
        Assert.Contains(reply.Lines, line => line.Contains("backup", StringComparison.Ordinal));
        Assert.Equal(Audience.Asker, reply.Audience);
    }

    [Fact]
    public async Task Export_AfterAnOuting_HoldsOnesOwnRowsAndNobodyElses()
    {
        await OutingAsync();

        using var held = JsonDocument.Parse(Encoding.UTF8.GetString((await _room.SayAsync("crew privacy do:export", Name)).Files.Single().Content.Span));

        Assert.Equal(Name, held.RootElement.GetProperty("member")[0].GetProperty("name").GetString());
        Assert.Equal(["soft bite", "left line"], held.RootElement.GetProperty("catch_entry").EnumerateArray().Select(row => row.GetProperty("note").GetString()));
        Assert.DoesNotContain("Bo", held.RootElement.GetProperty("member").ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Erase_Unconfirmed_AsksAndErasesNothing()
    {
        await OutingAsync();
        var before = await _room.BytesAsync();

        var reply = await _room.SayAsync("crew privacy do:erase", Name);

        Assert.Contains("Nothing is erased yet", reply.Headline, StringComparison.Ordinal);
        Assert.Contains(reply.Actions, action => action.Command == "/crew privacy do:erase confirm:yes");
        Assert.Equal(before, await _room.BytesAsync());
    }

    // The file itself is searched: neither rows, nor answers kept for others, nor freed pages hold a trace.
    [Fact]
    public async Task Erase_Confirmed_LeavesNoTraceInTheFile()
    {
        await OutingAsync();
        string[] traces = [Name, "soft bite", "left line", "photo-of-quist"];
        var before = Encoding.UTF8.GetString(await _room.BytesAsync());
        Assert.All(traces, trace => Assert.Contains(trace, before, StringComparison.Ordinal));

        var reply = await _room.SayAsync("crew privacy do:erase confirm:yes", Name, id: "erase");

        Assert.Null(reply.Problem);
        Assert.Contains(reply.Lines, line => line.Contains("backup", StringComparison.Ordinal));
        var after = Encoding.UTF8.GetString(await _room.BytesAsync());
        Assert.All(traces, trace => Assert.DoesNotContain(trace, after, StringComparison.Ordinal));
    }

    // Cards, reminders and alerts of trips are kept as they were said, and say who comes, is out, and under which name before.
    [Fact]
    public async Task Erase_NamedInPosts_LeavesNoTraceInTheFile()
    {
        await _room.SayAsync("crew setup water:\"Loon Basin\"");
        _room.Place = "room";
        await _room.SayAsync("trip plan water:\"Loon Basin\" meet:\"tomorrow 07:00\"");
        await _room.SayAsync("trip join answer:in smoke:smoke-free with:Ana", Name);
        await _room.SayAsync("trip join answer:in with:\"Annabel Quist\"", "Bo");
        _room.Now += TimeSpan.FromHours(12);
        await _room.SayAsync("trip out spot:\"quist corner\"", Name);
        await _room.SayAsync("trip back", Name);
        string[] traces = [Name, "quist corner", "asksSmokeFree"];
        var before = Encoding.UTF8.GetString(await _room.BytesAsync());
        Assert.All(traces, trace => Assert.Contains(trace, before, StringComparison.Ordinal));

        var reply = await _room.SayAsync("crew privacy do:erase confirm:yes", Name);

        Assert.Contains(reply.Lines, line => line.StartsWith("What the bot posted and names you is edited:", StringComparison.Ordinal));
        var after = Encoding.UTF8.GetString(await _room.BytesAsync());
        Assert.All(traces, trace => Assert.DoesNotContain(trace, after, StringComparison.Ordinal));
        Assert.Contains((await _room.SayAsync("trip show")).Lines, line => line == "In: 3 people: Ana, former angler, Bo.");
    }

    [Fact]
    public async Task Erase_Confirmed_KeepsTheFishAsAFormerAnglers()
    {
        await OutingAsync();
        await _room.SayAsync("crew privacy do:erase confirm:yes", Name, id: "erase");

        Assert.Contains((await _room.SayAsync("catch list")).Lines, line => line.Contains("walleye, 20.25 in (51.4 cm), former angler", StringComparison.Ordinal));
        Assert.Contains((await _room.SayAsync("catch leaders")).Lines, line => line.Contains("former angler (#1)", StringComparison.Ordinal));
        Assert.Contains("no lines down", (await _room.SayAsync("lines up", Name)).Problem, StringComparison.Ordinal);
        Assert.Contains("Nothing is held", (await _room.SayAsync("crew privacy", Name)).Problem, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Erase_RequestsDeliveredAgain_ChangeNothingAndBringNobodyBack()
    {
        await OutingAsync();
        var erased = await _room.SayAsync("crew privacy do:erase confirm:yes", Name, id: "erase");
        var again = await _room.SayAsync("crew privacy do:erase confirm:yes", Name, id: "erase");
        await _room.SayAsync("log walleye 20in", Name, id: "first");

        Assert.Equal(ReplyJson.Write(erased), ReplyJson.Write(again));
        Assert.Contains("Nothing is held", (await _room.SayAsync("crew privacy", Name)).Problem, StringComparison.Ordinal);
        Assert.Equal(3, (await _room.SayAsync("catch list")).Lines.Count);
    }

    [Fact]
    public async Task Erase_InOneCrew_LeavesTheOtherAlone()
    {
        await OutingAsync();
        await _room.SayAsync("log walleye 20in", Name, crew: "other");
        await _room.SayAsync("crew privacy do:erase confirm:yes", Name);

        Assert.Contains((await _room.SayAsync("catch list", crew: "other")).Lines, line => line.Contains(Name, StringComparison.Ordinal));
    }

    // What stands in a channel, or is yet to be said there, names the person no more; neither does a later correction of it.
    [Fact]
    public async Task Erase_SomebodyWhoseIceWasRelayed_TakesTheNameOutOfEveryCopy()
    {
        _room.Place = "ice-channel";
        await _room.SayAsync("crew setup water:\"Loon Basin\"");
        await _room.SayAsync("ice follow water:\"Loon Basin\"");
        await _room.SayAsync("ice report water:\"Loon Basin\" spot:\"north bay\" clear:5in", Name);
        await _room.SayAsync($"ice report water:\"Loon Basin\" spot:\"north bay\" clear:5in author:\"{Name}\" quote:\"five inches off the point\"", "Bo");
        Assert.All(await PostsAsync(), post => Assert.Contains(Name, post.Body, StringComparison.Ordinal));

        await _room.SayAsync("crew privacy do:erase confirm:yes", Name);

        var posts = await PostsAsync();
        Assert.Equal(2, posts.Count);
        Assert.Contains(ReplyJson.Read(posts[0].Body).Lines, line => line.StartsWith("By former angler; measured", StringComparison.Ordinal));
        Assert.All(posts, post => Assert.DoesNotContain(Name, post.Body, StringComparison.Ordinal));
        await _room.SayAsync("ice correct report:1 reason:\"tape\" clear:4in");
        await _room.SayAsync("ice correct report:2 reason:\"tape\" clear:4in");
        Assert.All(await PostsAsync(), post => Assert.DoesNotContain(Name, post.Body, StringComparison.Ordinal));
        Assert.DoesNotContain(Name, Encoding.UTF8.GetString(await _room.BytesAsync()), StringComparison.Ordinal);
    }

    // A name may be a word, and a word within a word is no name.
    [Fact]
    public async Task Erase_SomebodyWithAWordForAName_LeavesOtherWordsAlone()
    {
        _room.Place = "ice-channel";
        await _room.SayAsync("crew setup water:\"Loon Basin\"");
        await _room.SayAsync("ice follow water:\"Loon Basin\"");
        await _room.SayAsync("ice report water:\"Loon Basin\" spot:\"Reedy bay\" clear:5in", "Reed");

        await _room.SayAsync("crew privacy do:erase confirm:yes", "Reed");

        var card = ReplyJson.Read((await PostsAsync()).Single().Body);
        Assert.Contains("Reedy bay", card.Headline, StringComparison.Ordinal);
        Assert.Contains(card.Lines, line => line.StartsWith("By former angler", StringComparison.Ordinal));
    }

    public ValueTask DisposeAsync() => _room.DisposeAsync();

    private async Task OutingAsync()
    {
        await _room.SayAsync("lines down", Name);
        await _room.SayAsync("catch log species:walleye length:20in note:\"soft bite\" photo:https://cdn.example/photo-of-quist", Name, id: "first");
        _room.Now += TimeSpan.FromMinutes(5);
        await _room.SayAsync("catch log species:walleye length:19in note:\"left line\"", Name);
        await _room.SayAsync("catch edit catch:1 length:20.25in", Name);
        await _room.SayAsync("log walleye 18in", "Bo");
    }

    private async Task<IReadOnlyList<Post>> PostsAsync()
    {
        IReadOnlyList<Post> posts = [];
        await _room.WriteAsync(async session => posts = await new PostRepository(session).PendingAsync());
        return posts;
    }
}
