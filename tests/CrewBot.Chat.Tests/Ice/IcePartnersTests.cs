using CrewBot.Chat.Commands;
using CrewBot.Storage.Outbox;

namespace CrewBot.Chat.Tests.Ice;

/// <summary>What crews that share reports have of each other: bad news counts against the ice, nothing counts for it.</summary>
public sealed class IcePartnersTests
{
    private const string Carry = "/ice carry water:\"Loon Basin\" spot:\"north bay\" warmest:10F";
    private const string Board = "/ice board water:\"Loon Basin\"";
    private const string Bad = "/ice report water:\"Loon Basin\" spot:\"north bay, by the reeds\" hazard:\"broke through\" note:\"off the red shack\"";

    [Fact]
    public async Task Carry_PartnersBadNewsOfAHiddenSpot_BlocksTheWholeWater()
    {
        await using var room = await AgreedAsync();
        await room.SayAsync(Bad, crew: "bravo");

        var carry = await room.SayAsync(Carry);
        var board = await room.SayAsync(Board);

        Assert.Equal("Loon Basin, north bay: a partner crew has bad news that it has not closed: stay off", carry.Headline);
        Assert.Contains("Bad news of a partner crew, which does not share the spot: broke through, just now.", carry.Lines);
        Assert.DoesNotContain(carry.Figures, figure => figure.Key != "ice.load");
        Assert.Contains("STANDS: somewhere on it, the spot is not shared: broke through. A partner crew's, Ana, just now.", board.Lines);
        Assert.Contains("Stay off, and tell others.", board.Cautions);
        Assert.DoesNotContain("red shack", ReplyJson.Write(carry) + ReplyJson.Write(board), StringComparison.Ordinal);
        Assert.DoesNotContain("reeds", ReplyJson.Write(carry) + ReplyJson.Write(board), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Carry_PartnersBadNewsOfASpotThatIsShown_BlocksThatSpot()
    {
        await using var room = await AgreedAsync("spot:shown");
        await room.SayAsync(Bad, crew: "bravo");
        await room.SayAsync("/ice report water:\"Loon Basin\" spot:\"south point\" clear:12in");

        Assert.Contains("a partner crew has bad news", (await room.SayAsync(Carry)).Headline, StringComparison.Ordinal);
        Assert.Contains("meets the published figure", (await room.SayAsync(Carry.Replace("north bay", "south point", StringComparison.Ordinal))).Headline, StringComparison.Ordinal);
        Assert.Contains((await room.SayAsync(Board)).Lines, line => line.StartsWith("STANDS: north bay, by the reeds: broke through.", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Carry_PartnersWeakIceOfToday_KeepsEverybodyOffTheWater()
    {
        await using var room = await AgreedAsync("spot:shown");
        await room.SayAsync("/ice report water:\"Loon Basin\" spot:\"south point\" total:14in kind:grey", crew: "bravo");

        Assert.Equal("Loon Basin, north bay: a partner crew reports weak ice: stay off the whole water", (await room.SayAsync(Carry)).Headline);
    }

    [Fact]
    public async Task Carry_PartnersBadNewsThatEnds_BlocksNoMore()
    {
        await using var room = await AgreedAsync();
        await room.SayAsync(Bad, crew: "bravo");
        room.Now += TimeSpan.FromMinutes(10);
        await room.SayAsync("/ice report water:\"Loon Basin\" spot:\"north bay, by the reeds\" clear:9in", crew: "bravo");
        Assert.Null((await room.SayAsync("/ice close report:1 measured:2 reason:\"drilled all round\"", crew: "bravo")).Problem);

        Assert.Contains("meets the published figure", (await room.SayAsync(Carry)).Headline, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("tamarack", "bravo")]
    [InlineData("bravo", "tamarack")]
    public async Task Carry_OnceOneOfThemSharesNoMore_NeitherReadsTheOther(string ends, string other)
    {
        await using var room = await AgreedAsync();
        await room.SayAsync(Bad, crew: "bravo");
        await room.SayAsync($"/ice share crew:{other} end:yes", crew: ends);

        Assert.Contains("meets the published figure", (await room.SayAsync(Carry)).Headline, StringComparison.Ordinal);
        Assert.DoesNotContain((await room.SayAsync(Board)).Lines, line => line.Contains("STANDS", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Board_OnlyAPartnerReported_SaysSo()
    {
        await using var room = await AgreedAsync(measured: null);
        await room.SayAsync(Bad, crew: "bravo");

        Assert.Equal("Nobody of this crew has reported ice on Loon Basin; a partner crew has bad news of it", (await room.SayAsync(Board)).Headline);
    }

    // Another crew's names for places are not this crew's, and a spot that is hidden is no spot.
    [Fact]
    public async Task Carry_PartnersGoodMeasurement_SupportsNothing()
    {
        await using var room = await AgreedAsync("spot:shown", measured: null);
        await room.SayAsync("/ice report water:\"Loon Basin\" spot:\"north bay\" clear:14in", crew: "bravo");

        Assert.Contains("no measurement of today", (await room.SayAsync(Carry)).Headline, StringComparison.Ordinal);
        Assert.Contains("Nobody has reported", (await room.SayAsync(Board)).Headline, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Correct_AfterSharingEnded_ReachesTheFormerPartnersCopyAndTellsItNothingElse()
    {
        await using var room = await AgreedAsync("spot:shown", measured: null);
        await room.SayAsync("/ice report water:\"Loon Basin\" spot:\"north bay\" clear:5in", crew: "bravo");
        await room.SayAsync("/ice share crew:tamarack end:yes", crew: "bravo");

        await room.SayAsync("/ice correct report:1 reason:\"read the tape wrong\" clear:3in", crew: "bravo");
        Assert.Contains("Corrected: Ice report: Loon Basin, north bay", await CopyAsync(room), StringComparison.Ordinal);
        Assert.Contains("3 in (7.6 cm) clear", await CopyAsync(room), StringComparison.Ordinal);

        room.Now += TimeSpan.FromMinutes(1);
        await room.SayAsync("/ice correct report:1 reason:\"other bay\" spot:\"secret bay\" note:\"by the dock\"", crew: "bravo");
        var moved = await CopyAsync(room);
        Assert.Contains("the spot is not shared", moved, StringComparison.Ordinal);
        Assert.DoesNotContain("secret bay", moved, StringComparison.Ordinal);
        Assert.DoesNotContain("by the dock", moved, StringComparison.Ordinal);

        await room.SayAsync("/ice withdraw report:1 reason:\"wrong lake\"", crew: "bravo");
        Assert.Contains("Withdrawn", await CopyAsync(room), StringComparison.Ordinal);
        await room.SayAsync("/ice report water:\"Loon Basin\" spot:\"north bay\" hazard:\"open water\"", crew: "bravo");
        Assert.Null(await FindAsync(room, 2));
    }

    [Fact]
    public async Task Correct_WhileSharing_TellsThePartnerAllOfIt()
    {
        await using var room = await AgreedAsync("spot:shown", measured: null);
        await room.SayAsync("/ice report water:\"Loon Basin\" spot:\"north bay\" clear:5in", crew: "bravo");

        await room.SayAsync("/ice correct report:1 reason:\"other bay\" spot:\"east bay\"", crew: "bravo");

        Assert.Contains("Corrected: Ice report: Loon Basin, east bay", await CopyAsync(room), StringComparison.Ordinal);
    }

    private static async Task<string> CopyAsync(CrewRoom room) => (await FindAsync(room, 1))!.Body;

    // A relay is a post of the crew that measured.
    private static async Task<Post?> FindAsync(CrewRoom room, int report)
    {
        Post? post = null;
        await room.WriteAsync(async session => post = await new PostRepository(session).FindAsync($"ice/{report}/tamarack-ice"), "bravo");
        return post;
    }

    /// <summary>Crews tamarack and bravo, which share; what bravo shows is said, and tamarack has measured.</summary>
    private static async Task<CrewRoom> AgreedAsync(string bravoShows = "", string? measured = "clear:12in")
    {
        var room = new CrewRoom();
        foreach (var crew in (string[])["tamarack", "bravo"])
        {
            room.Place = $"{crew}-ice";
            await room.SayAsync("/crew setup water:\"Loon Basin\"", crew: crew);
            await room.SayAsync("/ice follow water:\"Loon Basin\"", crew: crew);
        }

        await room.SayAsync("/ice share crew:bravo");
        Assert.Null((await room.SayAsync($"/ice share crew:tamarack {bravoShows}", crew: "bravo")).Problem);
        if (measured is not null)
        {
            await room.SayAsync($"/ice report water:\"Loon Basin\" spot:\"north bay\" {measured}");
            room.Now += TimeSpan.FromMinutes(5);
        }

        return room;
    }
}
