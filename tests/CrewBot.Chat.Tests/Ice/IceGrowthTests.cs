using System.Text;

namespace CrewBot.Chat.Tests.Ice;

public sealed class IceGrowthTests : IAsyncDisposable
{
    private const string FileCommand = "/ice growth file:https://files.example/days.csv";

    private readonly CrewRoom _room = new();

    [Fact]
    public async Task Growth_ColdDays_SaysThatTheWeatherHasBeenMakingIce()
    {
        var reply = await _room.SayAsync("/ice growth days:\"20/0 20/0 20/0 20/0 20/0F\"");

        // 20/0 °F is 22 °F·day by the reference's rule (freezing point less the day's mean), five of them 110, which is 61 °C·day.
        Assert.Equal("The weather has been making ice: 110 °F·day (61 °C·day) of frost in 5 days", reply.Headline);
        Assert.Contains("How thick any ice is does not follow from weather: measure it.", reply.Lines);
        Assert.Equal(61.11, reply.Figures.Single(figure => figure.Key == "ice.frost").Value, 0.01);
    }

    [Theory]
    [InlineData("30/-5 20/0F", "The weather has been making ice")]
    [InlineData("20/0 35/10F", "The weather makes ice by night and weakens it by day")]
    [InlineData("20/0 20/0 20/0 40/33 40/33 40/33F", "The weather has been taking ice away")]
    [InlineData("5/1C", "The weather has made no ice that lasts")]
    public async Task Growth_Days_AreToldByWhatTheyDid(string days, string says)
    {
        var reply = await _room.SayAsync($"/ice growth days:\"{days}\" snow:4in");

        Assert.StartsWith($"{says}: ", reply.Headline, StringComparison.Ordinal);
        Assert.Equal(says.EndsWith("making ice", StringComparison.Ordinal), !reply.Lines.Any(line => line.Contains("is void", StringComparison.Ordinal)));
    }

    // Weather gives no thickness (the rule on growth models): no length in any line, reason or figure, whatever is asked.
    [Theory]
    [InlineData("days:\"20/0 20/0 20/0 20/0 20/0F\"")]
    [InlineData("days:\"-20/-30 -20/-30 -20/-30 -20/-30C\" snow:10cm")]
    [InlineData("days:\"5/-1 20/0F\" snow:12in")]
    public async Task Growth_WhateverTheWeather_HoldsNoThickness(string asked)
    {
        var reply = await _room.SayAsync($"/ice growth {asked}");

        Assert.All(
            [reply.Headline, .. reply.Lines, .. reply.Reasons],
            line => Assert.DoesNotMatch(@"[0-9] ?(in|cm|mm|m|ft|inches)\b", line));
        Assert.DoesNotContain(reply.Figures, figure => figure.Unit is "cm" or "mm" or "m" or "in");
        Assert.Contains(reply.Cautions, line => line.Contains("No ice is safe", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Growth_AStationsFile_IsReadAsTypedDaysAre()
    {
        _room.File = Encoding.UTF8.GetBytes("Date;Max Temp (°C);Min Temp (°C)\n2027-01-14;-3,5;-15\n2027-01-13;-2;-12\n");

        var fromFile = await _room.SayAsync(FileCommand);
        var typed = await _room.SayAsync("/ice growth days:\"-2/-12 -3.5/-15C\"");

        Assert.Equal(typed.Headline, fromFile.Headline);
        Assert.Equal(typed.Lines, fromFile.Lines);
    }

    [Fact]
    public async Task Growth_NumbersWithoutUnit_TakeTheCrewsAndAreNamed()
    {
        Assert.Contains("Assumed: °F.", (await _room.SayAsync("/ice growth days:\"20/0 18/-2\"")).Lines);
        _room.File = "max,min\n20,0\n"u8.ToArray();
        Assert.Contains("Assumed: °F.", (await _room.SayAsync(FileCommand)).Lines);
    }

    [Theory]
    [InlineData("date,max_f,min_f\n2027-01-10,20,0\n2027-01-12,20,0\n", "2027-01-11 is missing. A day that nobody knows may have thawed: add it, or start after it.")]
    [InlineData("date,max_f,min_f\n2027-01-10,20,0\n2027-01-10,20,0\n", "2027-01-10 is there twice: keep one.")]
    [InlineData("date,max_f,min_f\n2027-01-17,20,0\n", "A day to come is a forecast, and a forecast makes no ice: leave it out.")]
    [InlineData("date,max_f,min_f\n2027-01-10,,0\n", "line 2: max or min is missing. A day that nobody knows may have thawed: fill it in, or start after it.")]
    [InlineData("date,max_f,min_f\nsoon,20,0\n", "line 2: 'soon' is no date. Give it as 2027-01-16.")]
    [InlineData("date,max_f,min_f\n2027-01-10,0,20\n", "line 2: '0/20' has its min above its max: give max/min, such as 20/5F.")]
    [InlineData("date,snow\n2027-01-10,3\n", "The first row names no maximum or no minimum. It needs columns date, max and min, such as max_f and min_f.")]
    [InlineData("max,min\n", "The file has 0 days: give 1 to 300.")]
    [InlineData("", "The file is empty. It needs columns date, max and min, such as max_f and min_f.")]
    public async Task Growth_FileThatDoesNotTellEveryDay_IsRefusedInALine(string file, string problem)
    {
        _room.File = Encoding.UTF8.GetBytes(file);

        Assert.Equal(problem, (await _room.SayAsync(FileCommand)).Problem);
    }

    [Theory]
    [InlineData("/ice growth", "Give days, each day's max/min, oldest first, such as 20/5 18/2 25/-3F; or file, a CSV with the columns date, max and min.")]
    [InlineData("/ice growth days:\"20\"", "days: '20' is no max/min. Give each day's max/min, oldest first, such as 20/5 18/2 25/-3F.")]
    [InlineData("/ice growth days:\"5/20F\"", "days: '5/20F' has its min above its max: give max/min, such as 20/5F.")]
    [InlineData("/ice growth days:\"20/5in\"", "days: '20in' is a length, not a temperature. Give degrees with C or F, such as 10F or -12C.")]
    [InlineData("/ice growth days:\"20/5F\" file:https://files.example/days.csv", "days and file say the same thing: keep one.")]
    public async Task Growth_TypedWrongly_IsRefusedInALine(string line, string problem) =>
        Assert.Equal(problem, (await _room.SayAsync(line)).Problem);

    [Fact]
    public async Task Growth_FileThatCannotBeHad_SaysWhy()
    {
        _room.FileFault = "That file is larger than 200 kB.";

        Assert.Equal(_room.FileFault, (await _room.SayAsync(FileCommand)).Problem);
    }

    public ValueTask DisposeAsync() => _room.DisposeAsync();
}
