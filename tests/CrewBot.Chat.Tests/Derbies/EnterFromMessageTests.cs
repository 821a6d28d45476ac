using CrewBot.Chat.Commands;

namespace CrewBot.Chat.Tests.Derbies;

public sealed class EnterFromMessageTests : IAsyncDisposable
{
    private readonly CrewRoom _room = new() { Now = new DateTimeOffset(2027, 1, 16, 19, 0, 0, TimeSpan.Zero) };

    public ValueTask DisposeAsync() => _room.DisposeAsync();

    [Theory]
    [InlineData("walleye 21in", "Caught 19:20, received 20:00.")]
    [InlineData("walleye 21in 15 min ago", "Caught 19:45, received 20:00.")]
    public async Task Enter_FromTheMenuOfAMessage_IsCaughtWhenItWasSentUnlessItSaysOtherwise(string words, string times)
    {
        await StartAsync();

        Assert.Contains(times, (await EnterAsync(words)).Lines);
    }

    [Fact]
    public async Task Enter_OneMessageTwice_NoticesItsPhoto()
    {
        await StartAsync();
        await EnterAsync("walleye 21in");

        Assert.StartsWith("That photo is in Basin day already, with entry 1.", (await EnterAsync("walleye 21in")).Problem, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Enter_AMessageThatNamesNoFish_AsksInsteadOfEnteringTheLastOne()
    {
        await StartAsync();
        await _room.SayAsync("log walleye 25in");

        Assert.StartsWith("Which fish is it?", (await EnterAsync("")).Problem, StringComparison.Ordinal);
        Assert.Null((await _room.SayAsync("/derby enter")).Problem);
    }

    private async Task StartAsync()
    {
        await _room.SayAsync("/derby create name:\"Basin day\" ends:23:00");
        await _room.SayAsync("/derby join");
        _room.Now += TimeSpan.FromHours(1);
    }

    private Task<Reply> EnterAsync(string words)
    {
        var menu = _room.Catalog.Commands.Single(info => info.Path == "derby enter").OnMessage!;
        var message = new ChatMessage(words, new Person("Ana"), "Ana", new DateTimeOffset(2027, 1, 16, 19, 20, 0, TimeSpan.Zero))
        {
            Photo = Attachment.Of(new Uri("https://photos.example/walleye.jpg")),
        };
        return _room.CallAsync("derby enter", menu.SaidIn(message), menu.GivenBy(message));
    }
}
