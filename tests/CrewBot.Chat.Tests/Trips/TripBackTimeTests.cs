namespace CrewBot.Chat.Tests.Trips;

/// <summary>When somebody is back, as people say it: what has one meaning is read, what has two is asked about.</summary>
public sealed class TripBackTimeTests : IAsyncDisposable
{
    private readonly CrewRoom _room = new() { Now = new DateTimeOffset(2027, 1, 16, 6, 0, 0, TimeSpan.Zero) };

    public ValueTask DisposeAsync() => _room.DisposeAsync();

    // It is 10:00.
    [Theory]
    [InlineData("in 2 hours", "back by 12:00")]
    [InlineData("2 hours", "back by 12:00")]
    [InlineData("an hour and a half", "back by 11:30")]
    [InlineData("half an hour", "back by 10:30")]
    [InlineData("1h30", "back by 11:30")]
    [InlineData("90 min", "back by 11:30")]
    [InlineData("noon", "back by 12:00")]
    [InlineData("16", "back by 16:00")]
    [InlineData("4pm", "back by 16:00")]
    [InlineData("tomorrow 02:00", "back by Sun 17 Jan 02:00")]
    public async Task Out_BackInOneMeaning_IsRead(string said, string back)
    {
        await TripAsync();

        Assert.Equal($"Ana is on the ice, {back}", (await _room.SayAsync($"/trip out back:\"{said}\"")).Headline);
    }

    [Theory]
    [InlineData("4", "back: '4' can be 04:00 or 16:00: give the one you mean.")]
    [InlineData("tomorrow 12", "back: 'tomorrow 12' can be tomorrow 12:00 or tomorrow 00:00: give the one you mean.")]
    [InlineData("4:00", "Sat 16 Jan 04:00 has passed: give when you mean to be back, such as back:16:00")]
    [InlineData("2am", "Sat 16 Jan 02:00 has passed: give when you mean to be back, such as back:14:00")]
    [InlineData("2027-01-10 10:00", "Sun 10 Jan 10:00 has passed: give when you mean to be back, such as back:\"2 hours\"")]
    [InlineData("a bit", "back: can't read 'a bit'. Give a time, such as 16:00, tomorrow 02:00, or how long it is until then, such as 2 hours.")]
    public async Task Out_BackInTwoMeaningsOrNone_IsAskedAboutWithALineThatWorks(string said, string problem)
    {
        await TripAsync();

        Assert.Equal(problem, (await _room.SayAsync($"/trip out back:\"{said}\"")).Problem);
    }

    // Due back at 16:00.
    [Theory]
    [InlineData("by:18:00", "18:00")]
    [InlineData("by:6pm", "18:00")]
    [InlineData("by:\"2 hours\"", "18:00")]
    [InlineData("by:+1h30", "17:30")]
    [InlineData("\"an hour\"", "17:00")]
    [InlineData("by:\"half an hour\"", "16:30")]
    [InlineData("by:\"in 8 hours\"", "18:00")]
    [InlineData("by:\"tomorrow 05:00\"", "Sun 17 Jan 05:00")]
    public async Task Late_ByHowMuchOrByWhatTime_IsRead(string said, string back)
    {
        await TripAsync();
        await _room.SayAsync("/trip out back:16:00");

        Assert.Equal($"Ana will be back by {back}", (await _room.SayAsync($"/trip late {said}")).Headline);
    }

    [Theory]
    [InlineData("5", "by: can't read '5'. Give how much later, from 5 min to 24 h, such as +1h or 30 min, or the time, such as 18:00.")]
    [InlineData("5:00", "05:00 is tomorrow morning: say by:17:00, or by:\"tomorrow 05:00\" if you mean that.")]
    [InlineData("15:00", "Back is said to be by 16:00 already, and 15:00 is no later. Say how much later, such as by:+1h, or /trip back once off the ice.")]
    [InlineData("2027-01-20 15:00", "Wed 20 Jan 15:00 is more than 24 h later: say it in steps, such as by:+24h, each when you know.")]
    public async Task Late_ByWhatMayMeanAnother_IsAskedAbout(string said, string problem)
    {
        await TripAsync();
        await _room.SayAsync("/trip out back:16:00");

        Assert.Equal(problem, (await _room.SayAsync($"/trip late by:\"{said}\"")).Problem);
        Assert.Contains("On the ice: Ana (back 16:00).", (await _room.SayAsync("/trip show")).Lines);
    }

    [Theory]
    [InlineData("meet:\"saturday 7\"", "meet: 'saturday 7' can be saturday 07:00 or saturday 19:00: give the one you mean.")]
    [InlineData("meet:\"2 hours\"", "meet: can't read '2 hours'.")]
    public async Task Plan_MeetInTwoMeanings_IsAskedAbout(string meet, string problem)
    {
        await _room.SayAsync("crew setup water:\"Loon Basin\"");

        Assert.StartsWith(problem, (await _room.SayAsync($"/trip plan water:\"Loon Basin\" {meet}")).Problem, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Out_WithSafetyKitMissing_SaysWhatToDoOfWhoeverIsOut()
    {
        await TripAsync();

        Assert.Contains(
            (await _room.SayAsync("/trip out")).Lines,
            line => line.StartsWith("Missing on this trip: ", StringComparison.Ordinal)
                && line.EndsWith(". Turn back for what is missing and stay off without it; if somebody has it along, /trip bring says so.", StringComparison.Ordinal));
    }

    private async Task TripAsync()
    {
        await _room.SayAsync("crew setup water:\"Loon Basin\"");
        await _room.SayAsync("trip plan water:\"Loon Basin\" meet:07:00");
        _room.Now += TimeSpan.FromHours(4);
    }
}
