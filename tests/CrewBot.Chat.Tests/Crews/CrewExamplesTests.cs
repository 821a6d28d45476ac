namespace CrewBot.Chat.Tests.Crews;

public sealed class CrewExamplesTests : IAsyncDisposable
{
    // A trip's day goes in its own order.
    private static readonly string[] TripDay =
    [
        "trip plan", "trip change", "trip show", "trip join", "trip bring", "trip need", "trip seats", "trip load", "trip day", "trip pack",
        "trip calendar", "trip out", "trip late", "trip back", "trip cancel",
    ];

    private readonly CrewRoom _room = new();

    [Fact]
    public async Task Examples_OfEveryCommandOfACrew_AreAnswered()
    {
        await _room.SayAsync("lines down presentation:\"jigging spoon\"");
        for (var fish = 1; fish <= 41; fish++)
        {
            Assert.Null((await _room.SayAsync($"log walleye {20 + (fish / 4m)}in")).Problem);
        }

        _room.Now += TimeSpan.FromHours(2);
        await _room.SayAsync("lines up");
        await _room.SayAsync("rig broke place:join end:curl");
        _room.File = "species,caught_at\nperch,2027-01-15 14:20\n"u8.ToArray();
        // A derby's day is told in docs/derby-day.md, which another test compares; ice has a day of its own.
        var commands = _room.Catalog.Commands.Where(info => !info.NeedsNoCrew && info.Family is not ("derby" or "ice")).ToList();
        Assert.NotEmpty(commands);
        foreach (var info in commands.OrderBy(info => info.Path == "catch void").ThenBy(info => Array.IndexOf(TripDay, info.Path)))
        {
            _room.Now = info.Path == "trip out" ? new DateTimeOffset(2027, 1, 23, 7, 45, 0, TimeSpan.Zero) : _room.Now;
            var reply = await _room.SayAsync(info.Example.Replace("file:", "file:https://files.example/", StringComparison.Ordinal));
            Assert.True(reply.Problem is null, $"{info.Example}: {reply.Problem}");
            Assert.NotEmpty(reply.Headline);
            Assert.InRange(reply.Lines.Count, 0, 8);
            _room.Now += TimeSpan.FromMinutes(15);
        }
    }

    public ValueTask DisposeAsync() => _room.DisposeAsync();
}
