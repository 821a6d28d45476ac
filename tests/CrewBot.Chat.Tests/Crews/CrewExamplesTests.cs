namespace CrewBot.Chat.Tests.Crews;

public sealed class CrewExamplesTests : IAsyncDisposable
{
    private readonly CrewRoom _room = new();

    [Fact]
    public async Task Examples_OfEveryCommandOfACrew_AreAnswered()
    {
        for (var fish = 1; fish <= 41; fish++)
        {
            Assert.Null((await _room.SayAsync($"log walleye {20 + (fish / 4m)}in")).Problem);
        }

        _room.File = "species,caught_at\nperch,2027-01-15 14:20\n"u8.ToArray();
        var commands = _room.Catalog.Commands.Where(info => !info.NeedsNoCrew).ToList();
        Assert.NotEmpty(commands);
        foreach (var info in commands.OrderBy(info => info.Path == "catch void"))
        {
            var reply = await _room.SayAsync(info.Example.Replace("file:", "file:https://files.example/", StringComparison.Ordinal));
            Assert.True(reply.Problem is null, $"{info.Example}: {reply.Problem}");
            Assert.NotEmpty(reply.Headline);
            Assert.InRange(reply.Lines.Count, 0, 8);
            _room.Now += TimeSpan.FromMinutes(15);
        }
    }

    public ValueTask DisposeAsync() => _room.DisposeAsync();
}
