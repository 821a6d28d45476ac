using System.Text.RegularExpressions;

namespace CrewBot.Chat.Tests.Boxes;

public sealed class PlanFromBoxTests : IAsyncDisposable
{
    private const string Plan = "rig plan species:walleye depth:24ft mood:neutral from:box";

    private readonly CrewRoom _room = new();

    [Fact]
    public async Task Plan_FromABox_TiesWhatIsThereAndNamesWhatToBuy()
    {
        await AddAsync("braid 8lb, fluorocarbon leader 8lb, 1/16oz tungsten small jig, auger 6in");

        var reply = await _room.SayAsync(Plan);

        Assert.Equal("Walleye, neutral, 24 ft (7.3 m): small jig, from your box", reply.Headline);
        Assert.Contains("8 lb (3.6 kg) braid", reply.Lines[0], StringComparison.Ordinal);
        Assert.StartsWith("Tie on: 1/16 oz (1.8 g) tungsten jig", reply.Lines[1], StringComparison.Ordinal);
        Assert.StartsWith("Buy next: 1/4 oz (7.1 g) lead spoon: then a jigging spoon can be tied, which goes ahead of a small jig", reply.Lines[6], StringComparison.Ordinal);
        Assert.Contains("6 in (15 cm) hole by your auger", reply.Lines[7], StringComparison.Ordinal);
        Assert.InRange(reply.Lines.Count, 7, 8);
        Assert.Equal(152.4, Assert.Single(reply.Figures, figure => figure.Key == "hole.diameter").Value, 3);
    }

    [Fact]
    public async Task Plan_FromMyBoxInWords_IsFromTheBox()
    {
        await AddAsync("braid 8lb, fluorocarbon leader 8lb, 1/16oz tungsten small jig, hook #6");

        Assert.Equal("Walleye, neutral, 24 ft (7.3 m): small jig, from your box", (await _room.SayAsync("walleye 24ft from my box")).Headline);
    }

    [Fact]
    public async Task Plan_FromABoxThatMakesNoRig_NamesThePurchaseInALine()
    {
        await AddAsync("braid 10lb, fluorocarbon leader 10lb");

        Assert.Equal(
            "Your box makes no rig for neutral walleye here. Buy 1/4 oz (7.1 g) lead spoon: then a jigging spoon can be tied.",
            (await _room.SayAsync(Plan)).Problem);
    }

    [Fact]
    public async Task Plan_FromAnEmptyBox_SaysAllThatIsNeeded() => Assert.StartsWith(
        "Your box makes no rig for neutral walleye here. Buy 10 lb (4.5 kg) braid: the start of a jigging spoon rig; it needs ",
        (await _room.SayAsync(Plan)).Problem, StringComparison.Ordinal);

    // Whoever buys what was named can put it into the box by the same words.
    [Theory]
    [InlineData("walleye")]
    [InlineData("pike")]
    [InlineData("perch")]
    [InlineData("laker")]
    public async Task Plan_BuyingWhatIsNamed_EndsInARig(string species)
    {
        for (var bought = 0; bought < 5 && await _room.SayAsync($"rig plan species:{species} from:box") is { Problem: { } missing }; bought++)
        {
            var what = missing[(missing.IndexOf("Buy ", StringComparison.Ordinal) + 4)..missing.IndexOf(": ", StringComparison.Ordinal)];
            await AddAsync(Regex.Replace(what, @" \([^)]*\)", ""));
        }

        Assert.Null((await _room.SayAsync($"rig plan species:{species} from:box")).Problem);
    }

    [Fact]
    public async Task Plan_FromTheBoxOfAnother_IsNotOnes()
    {
        await AddAsync("braid 10lb, fluorocarbon leader 10lb, 1/4oz jigging spoon");

        Assert.Null((await _room.SayAsync(Plan)).Problem);
        Assert.NotNull((await _room.SayAsync(Plan, member: "Bo")).Problem);
    }

    [Fact]
    public async Task Plan_FromABoxInADirectMessage_IsRefused() => Assert.Equal(
        "from:box works inside a crew's own chat: that is where your box is kept.", (await _room.SayAsync(Plan, crew: null)).Problem);

    [Fact]
    public async Task Plan_FromElsewhere_IsRefused() =>
        Assert.StartsWith("from: can't read 'shop'.", (await _room.SayAsync("rig plan species:walleye from:shop")).Problem, StringComparison.Ordinal);

    public ValueTask DisposeAsync() => _room.DisposeAsync();

    private async Task AddAsync(string items) => Assert.Null((await _room.SayAsync($"box add item:\"{items}\"")).Problem);
}
