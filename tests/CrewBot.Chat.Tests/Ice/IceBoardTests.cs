using CrewBot.Chat.Commands;

namespace CrewBot.Chat.Tests.Ice;

public sealed class IceBoardTests
{
    private const string Report = "/ice report water:\"Loon Basin\"";

    // A board never says that nothing was measured right below what was.
    [Theory]
    [InlineData("clear:8in", "#1 is shown but gives no figure: it lacks where. To add it: /ice correct report:1 spot:\"north bay\" reason:\"left out\"")]
    [InlineData("clear:8in author:Ben", "#1 is shown but gives no figure: it lacks where and when. To add it: /ice correct report:1 spot:\"north bay\" when:\"10 min ago\" reason:\"left out\"")]
    [InlineData("clear:8in spot:hump author:Ben", "#1 is shown but gives no figure: it lacks when. To add it: /ice correct report:1 when:\"10 min ago\" reason:\"left out\"")]
    [InlineData("clear:8in spot:hump sure:heard", "#1 is shown but gives no figure: it was guessed or heard. /ice report files what you measure.")]
    [InlineData("clear:3in", "#1 is shown but gives no figure: it lacks where.")]
    [InlineData("hazard:crack spot:hump", "#1 is shown but gives no figure: no thickness was measured.")]
    [InlineData("clear:8in spot:\"the narrows\"", "#1 is shown but gives no figure: none is ever given for a place like that (narrows).")]
    public async Task Board_OfAReportThatGivesNoFigure_SaysWhatItLacks(string said, string why)
    {
        await using var room = await RoomAsync();
        var filed = await room.SayAsync($"{Report} {said}");
        Assert.Null(filed.Problem);

        var board = await room.SayAsync("/ice board");

        Assert.Contains(why, board.Lines);
        Assert.DoesNotContain(board.Lines, line => line.Contains("Nothing measured", StringComparison.Ordinal));
        Assert.Empty(board.Figures);
        Assert.Equal(said.StartsWith("clear", StringComparison.Ordinal), filed.Lines.Contains(why));
    }

    [Fact]
    public async Task Board_OnceWhatWasLackingIsAdded_GivesTheFigure()
    {
        await using var room = await RoomAsync();
        await room.SayAsync($"{Report} clear:8in");

        Assert.Null((await room.SayAsync("/ice correct report:1 spot:\"north bay\" reason:\"left out\"")).Problem);

        Assert.Contains("Of the last 24 h, over all spots: 8 in (20.3 cm); the least counts as 8 in (20.3 cm) of clear ice.", (await room.SayAsync("/ice board")).Lines);
    }

    [Fact]
    public async Task Board_OfOldReportsAlone_SaysThatNothingWasMeasured()
    {
        await using var room = await RoomAsync();
        await room.SayAsync($"{Report} clear:8in");
        room.Now += TimeSpan.FromDays(2);

        Assert.Contains("Nothing measured within 24 h: no figure.", (await room.SayAsync("/ice board")).Lines);
    }

    [Theory]
    [InlineData("/ice correct report:1 reason:misread", "Nothing is corrected by that. Give what is right, such as /ice correct report:1 clear:4in reason:\"read the tape wrong\"")]
    [InlineData("/ice correct report:1 clear:4in", "reason is missing. Give a few words, up to 200 characters.")]
    [InlineData("/ice share end:yes", "Say with whom to end it, such as /ice share crew:north-shore end:yes")]
    [InlineData(Report + " clear:8in when:23:50", "That is in the future. Give when it was measured, such as when:\"yesterday 23:50\".")]
    [InlineData("/ice carry spot:hump warmest:2", "warmest: '2' has no unit. Give degrees with C or F, such as 10F or -12C.")]
    [InlineData(Report + " clear:8in air:2", "air: '2' has no unit. Give degrees with C or F, such as 10F or -12C.")]
    [InlineData("/trip load warmest:2", "warmest: '2' has no unit. Give degrees with C or F, such as 10F or -12C.")]
    public async Task Say_WhatIsNotEnough_SaysWhatToType(string line, string problem)
    {
        await using var room = await RoomAsync();
        await room.SayAsync($"{Report} clear:8in");

        Assert.Equal(problem, (await room.SayAsync(line)).Problem);
    }

    [Fact]
    public async Task Relay_WithTheWaterGiven_SaysItAndMayBeFiledAsRead()
    {
        await using var room = await RoomAsync();

        var reply = await room.SayAsync("/ice relay author:Dee water:\"Loon Basin\" post:\"10 inches at the hump\"");

        Assert.Contains("Water: Loon Basin. Measured: not said when.", reply.Lines);
        Assert.Contains(reply.Actions, action => action is { Label: "File as read", Kind: ActionKind.Run });
    }

    [Fact]
    public async Task Relay_OfHearsay_IsNotSaidToBeMeasured()
    {
        await using var room = await RoomAsync();

        var reply = await room.SayAsync("/ice relay author:Dee water:\"Loon Basin\" found:\"hump: 9in, heard\" when:\"2 h ago\"");

        Assert.Contains("So it was 2 h ago.", reply.Lines);
    }

    [Fact]
    public async Task Growth_OfFewerDaysThanTheLast_CountsThoseThatWereGiven()
    {
        await using var room = await RoomAsync();

        var reply = await room.SayAsync("/ice growth days:\"40/33F 45/35F\"");

        Assert.Contains(reply.Lines, line => line.StartsWith("Those 2 days took", StringComparison.Ordinal));
    }

    private static async Task<CrewRoom> RoomAsync()
    {
        var room = new CrewRoom();
        await room.SayAsync("/crew setup water:\"Loon Basin\"");
        return room;
    }
}
