namespace CrewBot.Chat.Tests.Ice;

public sealed class IceExamplesTests
{
    private static readonly string[] Day =
        ["ice rules", "ice share", "ice follow", "ice relay", "ice report", "ice board", "ice carry", "ice growth", "ice correct", "ice close", "ice withdraw", "ice leave"];

    [Fact]
    public async Task Examples_OfADayOnTheIce_AreAnsweredInAPhonesLines()
    {
        await using var room = new CrewRoom { Place = "ice-channel" };
        await room.SayAsync("/crew setup water:\"Loon Basin\"");
        foreach (var path in Day)
        {
            if (path == "ice close")
            {
                await room.SayAsync("/ice report water:\"Loon Basin\" spot:\"south point\" hazard:\"broke through\"");
                room.Now += TimeSpan.FromMinutes(15);
                await room.SayAsync("/ice report water:\"Loon Basin\" spot:\"south point\" clear:9in");
            }

            Assert.True(room.Catalog.TryFind(path, out var handler));
            var reply = await room.SayAsync(handler.Info.Example);
            Assert.True(reply.Problem is null, $"{handler.Info.Example}: {reply.Problem}");
            Assert.NotEmpty(reply.Headline);
            Assert.InRange(reply.Lines.Count, 1, 8);
            Assert.Contains(reply.Cautions.DefaultIfEmpty(""), caution => path is "ice share" or "ice leave" || caution.Contains("last word", StringComparison.Ordinal));
            room.Now += TimeSpan.FromMinutes(15);
        }
    }
}
