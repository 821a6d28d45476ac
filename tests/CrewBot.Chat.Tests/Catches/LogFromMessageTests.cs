using CrewBot.Chat.Commands;

namespace CrewBot.Chat.Tests.Catches;

/// <summary>What the menu of a message with a photo makes of it.</summary>
public sealed class LogFromMessageTests : IAsyncDisposable
{
    private const string Photo = "https://files.example/1/2/catch.jpg?ex=1&hm=2#id=77&name=catch.jpg&type=image%2Fjpeg&size=9";

    private readonly CrewRoom _room = new();

    public ValueTask DisposeAsync() => _room.DisposeAsync();

    [Fact]
    public async Task OnesOwnPhoto_IsLoggedFromItsWordsAtTheTimeOfTheMessage()
    {
        var reply = await LogAsync("what a walleye! 22.5in 24ft", author: "Ana");

        Assert.StartsWith("Walleye, 22.5 in (57.2 cm): logged as #1 for Ana", reply.Headline, StringComparison.Ordinal);
        Assert.Contains(reply.Lines, line => line.Contains("17:05", StringComparison.Ordinal));
        Assert.DoesNotContain(reply.Lines, line => line.Contains("posted it", StringComparison.Ordinal));
    }

    [Fact]
    public async Task WordsSayWhen_WinOverTheTimeOfTheMessage()
    {
        var reply = await LogAsync("walleye 22.5in yesterday 16:10", author: "Ana");

        Assert.Contains(reply.Lines, line => line.Contains("Fri 15 Jan 16:10", StringComparison.Ordinal));
    }

    // A time without a clock is refused where none else is known; a message has its own.
    [Fact]
    public async Task WordsSayNoClock_TheTimeOfTheMessageHoldsAndTheWordsAreNamed()
    {
        var reply = await LogAsync("walleye 22.5in this morning", author: "Ana");

        Assert.Contains(reply.Lines, line => line.Contains("17:05", StringComparison.Ordinal));
        Assert.Contains(reply.Lines, line => line.EndsWith("Not understood: 'this', 'morning'.", StringComparison.Ordinal));
    }

    [Fact]
    public async Task WordsSayNoClockBesideAnOptionThatDoes_TheOptionHolds() =>
        Assert.Contains("Fri 15 Jan 16:10", string.Join('\n', (await _room.SayAsync("log walleye 22.5in yesterday when:\"yesterday 16:10\"")).Lines), StringComparison.Ordinal);

    [Fact]
    public async Task SomebodyElsesPhoto_IsLoggedForWhoeverPressesAndSaysSo()
    {
        await _room.SayAsync("log perch 10in", member: "Bo");
        var reply = await LogAsync("walleye 22.5in", author: "Bo");

        Assert.EndsWith("for Ana", reply.Headline, StringComparison.Ordinal);
        Assert.Contains("Logged as Ana's; Bo posted it. If it is their fish, /catch void catch:2 and let them log it.", reply.Lines);
    }

    [Fact]
    public async Task SamePhotoAgain_IsAskedAboutThoughItsAddressWasSignedAnew()
    {
        await LogAsync("walleye 22.5in", author: "Ana");
        var again = await LogAsync("walleye 22in", author: "Ana", photo: Photo.Replace("hm=2", "hm=3", StringComparison.Ordinal));

        Assert.Contains("logged already, as #1 for Ana", again.Problem, StringComparison.Ordinal);
    }

    [Fact]
    public async Task AnyCatch_OffersLinesAndAFormToCorrectIt()
    {
        var first = await LogAsync("walleye 22.5in", author: "Ana");
        Assert.Equal(["Lines down", "Correct it"], first.Actions.Select(action => action.Label));
        Assert.Equal("/catch edit catch:1", first.Actions[1].Command);
        Assert.Equal(["length", "weight", "depth", "lure", "note"], first.Actions[1].Fields);

        await _room.SayAsync(first.Actions[0].Command);
        Assert.Equal("Lines up", (await _room.SayAsync("log perch 10in")).Actions[0].Label);
    }

    [Fact]
    public async Task BestOfAnother_ShowsTheirs()
    {
        await _room.SayAsync("log perch 10in", member: "Bo");

        Assert.Equal("Longest of each species by Bo", (await _room.SayAsync("/catch best angler:@Bo")).Headline);
        Assert.NotNull((await _room.SayAsync("/catch best angler:@Cy")).Problem);
    }

    private Task<Reply> LogAsync(string words, string author, string photo = Photo)
    {
        var menu = _room.Catalog.Commands.Single(info => info.Path == "catch log").OnMessage!;
        var message = new ChatMessage(words, new Person(author), author, new DateTimeOffset(2027, 1, 16, 17, 5, 0, TimeSpan.Zero))
        {
            Photo = Attachment.Of(new Uri(photo)),
        };
        return _room.CallAsync("catch log", menu.SaidIn(message), menu.GivenBy(message));
    }
}
