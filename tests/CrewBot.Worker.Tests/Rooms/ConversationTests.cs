using CrewBot.Chat.Commands;
using CrewBot.Worker.Rooms;
using CrewBot.Worker.Tests.Pictures;

namespace CrewBot.Worker.Tests.Rooms;

public sealed class ConversationTests
{
    private static readonly DateTimeOffset Noon = new(2026, 1, 17, 12, 0, 0, TimeSpan.FromHours(-6));

    private readonly Conversation _conversation;

    public ConversationTests()
    {
        var catalog = Commands.Catalog();
        var caller = new Caller("Tamarack Bay", "ida", Role.Owner, CrewUnits.Customary);
        _conversation = new Conversation(catalog, Commands.Dispatcher(catalog), new FakeDrawer(), caller, TimeProvider.System);
    }

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    [Fact]
    public async Task AnswerAsync_WordsAlone_AreReadAsThePlan() =>
        Assert.Equal("walleye, neutral: jigging spoon", (await SayAsync("walleye")).Headline);

    // Words are read as a plan; whoever meant something else is told where to look.
    [Theory]
    [InlineData("drop time 1/8oz 40ft", "Not about a rig? help rig drop")]
    [InlineData("which rigs are there", "help lists what else can be asked.")]
    [InlineData("how long to drop it", "help lists what else can be asked.")]
    public async Task AnswerAsync_WordsThatMakeNoPlan_PointElsewhere(string said, string lookThere) =>
        Assert.EndsWith(" " + lookThere, (await SayAsync(said)).Problem, StringComparison.Ordinal);

    [Theory]
    [InlineData("1")]
    [InlineData("One up")]
    [InlineData("one up")]
    public async Task AnswerAsync_ButtonByNumberOrName_RunsIt(string pressed)
    {
        await SayAsync("walleye");

        Assert.StartsWith("northern pike", (await SayAsync(pressed)).Headline, StringComparison.Ordinal);
    }

    [Fact]
    public async Task AnswerAsync_NumberBeyondTheButtons_SaysHowFarTheyGo()
    {
        await SayAsync("walleye");

        Assert.StartsWith("The buttons under the last answer go from 1 to ", (await SayAsync("99")).Problem, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("why")]
    [InlineData("/why")]
    [InlineData("2")]
    public async Task AnswerAsync_Why_GivesReasonsAndFiguresButNotThoseOfAlternatives(string asked)
    {
        await SayAsync("walleye");

        var why = await SayAsync(asked);

        Assert.Equal(
            [
                "Spoon: it calls from afar.",
                "Figures: drop.time 12.35 s · lure.wet-weight 0.01641 N · hole.margin 117.7 mm",
                "Figures line2: drop.time 9 s",
            ],
            why.Lines);
        Assert.Equal(["Mind the trebles."], why.Cautions);
    }

    [Fact]
    public async Task AnswerAsync_ShareAfterWhy_SharesTheAnswerItself()
    {
        await SayAsync("walleye");
        await SayAsync("why");

        var shared = await SayAsync("share");

        Assert.Equal("To Tamarack Bay, from ida: walleye, neutral: jigging spoon", shared.Headline);
        Assert.Equal(Audience.Crew, shared.Audience);
        Assert.Empty(shared.Actions);
    }

    [Theory]
    [InlineData("why")]
    [InlineData("share")]
    public async Task AnswerAsync_NothingAskedYet_Refuses(string asked) =>
        Assert.Contains("ask first", (await SayAsync(asked)).Problem, StringComparison.Ordinal);

    [Fact]
    public async Task AnswerAsync_RefusalInBetween_LeavesTheButtonsAsTheyWere()
    {
        await SayAsync("walleye");
        Assert.NotNull((await SayAsync("mackerel")).Problem);

        Assert.StartsWith("northern pike", (await SayAsync("1")).Headline, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("1")]
    [InlineData("neutral then")]
    public async Task AnswerAsync_RefusalThatOffersSomething_ItsButtonsWorkAndWhyStaysWithTheAnswer(string pressed)
    {
        await SayAsync("walleye");
        Assert.Equal("Not in that mood.", (await SayAsync("/rig drop mood:positive")).Problem);

        Assert.Contains("Spoon: it calls from afar.", (await SayAsync("why")).Lines);
        Assert.StartsWith("Asked at", (await SayAsync(pressed)).Headline, StringComparison.Ordinal);
    }

    [Fact]
    public async Task AnswerAsync_PictureIsPressed_DrawsItWithoutTheWordsAgain()
    {
        Assert.Empty((await SayAsync("walleye")).Files);

        var picture = await SayAsync("picture");

        Assert.Equal("rig.png", Assert.Single(picture.Files).Name);
        Assert.Empty(picture.Lines);
    }

    [Fact]
    public async Task AnswerAsync_PicturesOnThenOff_DrawsWithEveryAnswerUntilThen()
    {
        await SayAsync("walleye");

        Assert.Single((await SayAsync("pictures:on")).Files); // the answer above it too
        Assert.Single((await SayAsync("walleye")).Files);
        await SayAsync("pictures:off");
        Assert.Empty((await SayAsync("walleye")).Files);
    }

    [Theory]
    [InlineData("exit")]
    [InlineData("quit")]
    [InlineData("Leave")]
    [InlineData("/exit")]
    public async Task AnswerAsync_Leaving_GivesNoAnswer(string said) => Assert.Null(await _conversation.AnswerAsync(said, Stop));

    [Fact]
    public async Task AskAsync_IdAndInstant_ReachTheHandler()
    {
        var reply = await _conversation.AskAsync("/rig drop mood:neutral", "id-7", Noon, Stop);

        Assert.Equal("Asked at 2026-01-17T12:00:00.0000000-06:00 as id-7 by ida", reply.Headline);
    }

    [Fact]
    public async Task AnswerAsync_HelpOnACommand_NamesOptionsWhatTheyAcceptAndAnExample()
    {
        var help = await SayAsync("help /rig plan");

        Assert.Equal("/rig plan: Plans a rig", help.Headline);
        Assert.Equal(
            [
                "species: What you are after (required). Give walleye, yellow perch or northern pike.",
                "mood: How they bite. Give negative, neutral or positive.",
                "ask: All in a few words. Give words, such as walleye.",
                "Example: /rig plan species:walleye",
            ],
            help.Lines);
    }

    [Fact]
    public async Task AnswerAsync_HelpOnAWordOfOneCommand_IsThatCommands() =>
        Assert.Equal("/rig drop: How long a lure takes down", (await SayAsync("help drop")).Headline);

    [Fact]
    public async Task AnswerAsync_HelpOnNothingKnown_NamesTheNearest() =>
        Assert.Equal("There is no command 'rig plane'. Nearest: help rig plan", (await SayAsync("help rig plane")).Problem);

    [Fact]
    public async Task AnswerAsync_HelpOnNothingLikeACommand_PointsToTheList() =>
        Assert.Equal("There is no command 'dragon'. help lists what there is.", (await SayAsync("help dragon")).Problem);

    [Fact]
    public async Task AnswerAsync_HelpOnAFamily_ListsItsCommands() =>
        Assert.Equal(["/rig drop: How long a lure takes down", "/rig plan: Plans a rig"], (await SayAsync("help rig")).Lines);

    private async Task<Reply> SayAsync(string line)
    {
        var reply = await _conversation.AnswerAsync(line, Stop);
        Assert.NotNull(reply);
        return reply;
    }
}
