using CrewBot.Chat.Commands;
using CrewBot.Storage.Outbox;

namespace CrewBot.Chat.Tests.Ice;

/// <summary>Crews that share are shown by their names, and by nothing but their keys to all others.</summary>
public sealed class CrewNamesTests
{
    private const string Loon = "1100000000000000101";
    private const string Bay = "1100000000000000102";
    private const string LoonName = "Loon Basin Crew";
    private const string BayName = "Tamarack Bay Anglers";

    private const string Report = "/ice report water:\"Loon Basin\" spot:\"north bay\" clear:5in";

    [Fact]
    public async Task Share_OneSideAlone_NeverLearnsTheOthersName()
    {
        await using var room = await NamedAsync();
        var offered = await LoonAsync(room, $"/ice share crew:{Bay}");
        var listed = await LoonAsync(room, "/ice share");
        var theirs = await BayAsync(room, "/ice share");

        Assert.Equal($"Ice reports will be shared with crew {Bay} once its owner agrees too.", offered.Headline);
        Assert.Contains($"crew {Bay}: its owner has not agreed yet.", listed.Lines);
        Assert.Equal([Bay], await room.SuggestAsync("ice share", "crew", "", crew: Loon));
        Assert.Empty(await room.SuggestAsync("ice share", "crew", "", crew: Bay));
        Assert.DoesNotContain(BayName, ReplyJson.Write(offered) + ReplyJson.Write(listed), StringComparison.Ordinal);
        Assert.DoesNotContain(LoonName, ReplyJson.Write(theirs), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Share_BothAgreed_NamesEachToTheOther()
    {
        await using var room = await AgreedAsync();

        Assert.Equal($"Ice reports are shared with {LoonName}.", (await BayAsync(room, $"/ice share crew:{Loon}")).Headline);
        var listed = await LoonAsync(room, "/ice share");
        Assert.Equal("Ice reports are shared with one crew.", listed.Headline);
        Assert.Equal($"{BayName} ({Bay}): the exact spot stays hidden from them.", listed.Lines[0]);
        Assert.Equal([BayName], await room.SuggestAsync("ice share", "crew", "tam", crew: Loon));
    }

    [Fact]
    public async Task Share_PartnerByItsName_IsTheCrewMeant()
    {
        await using var room = await AgreedAsync();

        Assert.Equal("They see the exact spot.", (await LoonAsync(room, $"/ice share crew:\"{BayName.ToLowerInvariant()}\" spot:shown")).Lines[0]);
        Assert.Equal($"Nothing is shared with {BayName} any more.", (await LoonAsync(room, $"/ice share crew:\"{BayName}\" end:yes")).Headline);
        Assert.Equal("Ice reports are shared with no other crew.", (await LoonAsync(room, "/ice share")).Headline);
    }

    [Fact]
    public async Task Share_NameOfNoPartner_IsRefusedInsteadOfAgreeingWithNobody()
    {
        await using var room = await NamedAsync();

        Assert.Contains($"'{BayName}' is no partner crew's name, and a crew's key is a number such as {Loon}", (await LoonAsync(room, $"/ice share crew:\"{BayName}\"")).Problem, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Share_TwoPartnersOfOneName_AreToldApartByTheirKeys()
    {
        const string third = "1100000000000000103";
        await using var room = await AgreedAsync();
        await room.SayAsync($"/ice share crew:{Loon}", crew: third, crewName: BayName);
        await LoonAsync(room, $"/ice share crew:{third}");

        Assert.Equal([Bay, third], await room.SuggestAsync("ice share", "crew", "", crew: Loon));
        var refused = await LoonAsync(room, $"/ice share crew:\"{BayName}\" end:yes");
        Assert.Equal($"2 partner crews are called '{BayName}': give the key, {Bay} or {third}.", refused.Problem);
    }

    [Fact]
    public async Task Report_InAPartnersChannel_NamesTheCrewAndItsClock()
    {
        await using var room = await AgreedAsync();
        await LoonAsync(room, "/crew setup zone:America/Winnipeg");
        await LoonAsync(room, Report);

        Assert.Contains("By Ana; measured 2027-01-16 14:00 Winnipeg time. Report #1.", await LinesAsync(room, "loon-ice"));
        Assert.Contains($"By Ana of {LoonName}; measured 2027-01-16 14:00 Winnipeg time. Report #1.", await LinesAsync(room, "bay-ice"));
    }

    [Fact]
    public async Task Report_CrewIsCalledOtherwiseByNow_IsToldUnderTheNewName()
    {
        await using var room = await AgreedAsync();
        await room.SayAsync(Report, crew: Loon, crewName: "Loon Basin Ice");

        Assert.Contains(await LinesAsync(room, "bay-ice"), line => line.StartsWith("By Ana of Loon Basin Ice; measured 2027-01-16 20:00 UTC.", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Correct_AfterSharingEnded_TellsNoNewName()
    {
        await using var room = await AgreedAsync();
        await LoonAsync(room, Report);
        await BayAsync(room, $"/ice share crew:{Loon} end:yes");
        await room.SayAsync("/ice correct report:1 reason:\"read the tape wrong\" clear:3in", crew: Loon, crewName: "Loon Basin Ice");

        Assert.Contains(await LinesAsync(room, "bay-ice"), line => line.StartsWith("By Ana of a partner crew;", StringComparison.Ordinal));
        Assert.Equal("Ice reports are shared with no other crew.", (await BayAsync(room, "/ice share")).Headline);
        Assert.DoesNotContain("Loon Basin Ice", ReplyJson.Write(await BayAsync(room, "/ice share")), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Board_PartnersBadNews_NamesTheirCrew()
    {
        await using var room = await AgreedAsync();
        await BayAsync(room, "/ice report water:\"Loon Basin\" hazard:\"open water\"");

        var board = await LoonAsync(room, "/ice board water:\"Loon Basin\"");
        Assert.Contains(board.Lines, line => line.Contains($"A partner crew's, Ana of {BayName}, just now.", StringComparison.Ordinal));
    }

    private static Task<Reply> LoonAsync(CrewRoom room, string line) => room.SayAsync(line, crew: Loon);

    private static Task<Reply> BayAsync(CrewRoom room, string line) => room.SayAsync(line, crew: Bay);

    private static async Task<CrewRoom> NamedAsync()
    {
        var room = new CrewRoom();
        foreach (var (crew, name, channel) in ((string, string, string)[])[(Loon, LoonName, "loon-ice"), (Bay, BayName, "bay-ice")])
        {
            room.Place = channel;
            await room.SayAsync("/crew setup water:\"Loon Basin\"", crew: crew, crewName: name);
            await room.SayAsync("/ice follow water:\"Loon Basin\"", crew: crew);
        }

        return room;
    }

    private static async Task<CrewRoom> AgreedAsync()
    {
        var room = await NamedAsync();
        await LoonAsync(room, $"/ice share crew:{Bay}");
        await BayAsync(room, $"/ice share crew:{Loon}");
        return room;
    }

    private static async Task<IReadOnlyList<string>> LinesAsync(CrewRoom room, string channel)
    {
        IReadOnlyList<Post> posts = [];
        await room.WriteAsync(async session => posts = await new PostRepository(session).PendingAsync(), Loon);
        return ReplyJson.Read(posts.Single(post => post.Place == channel).Body).Lines;
    }
}
