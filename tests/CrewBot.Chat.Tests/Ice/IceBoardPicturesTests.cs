using CrewBot.Chat.Commands;
using CrewBot.Core.Pictures;
using UnitsNet;

namespace CrewBot.Chat.Tests.Ice;

public sealed class IceBoardPicturesTests : IAsyncDisposable
{
    private readonly CrewRoom _room = new();

    [Fact]
    public async Task Picture_OfABoard_IsOneButtonAway()
    {
        await ReportAsync("spot:\"north bay\" clear:7in");

        var reply = await BoardAsync();

        Assert.Equal(["Picture", "Why", "Share"], reply.Actions.Select(action => action.Label));
        Assert.Equal("ice-board", Assert.Single(reply.Pictures).Kind);
    }

    // White ice counts by half (US Army TM 5-852-1, Minnesota DNR), so that no bar flatters beside the lines; of a walk-out the least counts.
    [Fact]
    public async Task Picture_OfReports_DrawsWhatTheyCountAs()
    {
        await ReportAsync("spot:\"north bay\" clear:7in");
        await ReportAsync("spot:\"north bay\" white:9in");
        await ReportAsync("spot:\"north bay\" holes:\"9 8 10in\" kind:clear");
        await ReportAsync("spot:\"north bay\" total:12in");

        var spot = Assert.Single((await PictureAsync()).Spots);

        Assert.Equal("north bay", spot.Name);
        Assert.Equal([7, 4.5, 8, 6], spot.Reports.Select(report => report.Thickness.Inches), (one, other) => Math.Abs(one - other) < 1e-6);
        Assert.Equal([IceSign.Clear, IceSign.White, IceSign.Clear, IceSign.Unknown], spot.Reports.Select(report => report.Sign));
    }

    [Fact]
    public async Task Picture_BadNewsThatStands_ComesFirstAndHasNoThickness()
    {
        await ReportAsync("spot:\"south point\" clear:9in hazard:\"open water\"");
        await ReportAsync("spot:\"south point\" clear:9in");
        await ReportAsync("spot:\"east bay\" total:14in kind:layered");
        await ReportAsync("spot:\"north bay\" clear:9in");

        var spots = (await PictureAsync()).Spots;

        Assert.Equal(["east bay", "south point", "north bay"], spots.Select(spot => spot.Name));
        Assert.StartsWith("Stands: Open water", spots[1].Latest, StringComparison.Ordinal);
        Assert.Equal([IceSign.Unsound, IceSign.Clear], spots[1].Reports.Select(report => report.Sign));
        Assert.Equal(Length.Zero, spots[1].Reports[0].Thickness, (one, other) => one.Equals(other, Length.FromMillimeters(1e-6)));
        Assert.Equal(IceSign.Unsound, Assert.Single(spots[0].Reports).Sign);
        Assert.Equal([true, true, false], spots.Select(spot => spot.IsBad));
    }

    [Fact]
    public async Task Picture_BadNewsThatStands_BeginsTheCautionAndIsCountedWhereThereIsNoRoom()
    {
        for (var spot = 0; spot < 7; spot++)
        {
            await ReportAsync($"spot:\"bay {spot}\" hazard:\"open water\"");
        }

        var picture = await PictureAsync();

        Assert.StartsWith("Stay off, and tell others. No ice is safe ice.", picture.Caution, StringComparison.Ordinal);
        Assert.Equal("And 2 more spots, 2 of them to stay off. ", picture.Beyond);
        Assert.Contains("No ice is safe ice", picture.AlternativeText, StringComparison.Ordinal);
    }

    // A measurement is good for a day, and for no time at all when nobody said when it was made.
    [Fact]
    public async Task Picture_ReportOlderThanADayOrOfNoTime_IsOld()
    {
        await ReportAsync("spot:\"north bay\" clear:7in when:\"30 h ago\"");
        await ReportAsync("spot:\"north bay\" clear:8in");

        Assert.Equal([true, false], Assert.Single((await PictureAsync()).Spots).Reports.Select(report => report.IsOld));
    }

    [Fact]
    public async Task Picture_BadNewsOfTheSeasonThatWasClosed_IsStillTold()
    {
        await ReportAsync("spot:\"south point\" hazard:\"broke through\"");
        await ReportAsync("spot:\"south point\" clear:8in");
        Assert.Null((await _room.SayAsync("/ice close report:1 measured:2 reason:\"drilled all round the old hole\"")).Problem);

        Assert.Contains("Bad news closed this season: #1 south point", (await PictureAsync()).Beyond, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Picture_PlaceWhereNoNumberIsGiven_HasNeitherBarNorNumber()
    {
        await ReportAsync("spot:\"the narrows\" clear:11in");
        await ReportAsync("spot:\"north bay\" clear:9in sure:heard");

        var picture = await PictureAsync();

        Assert.All(picture.Spots, spot => Assert.Empty(spot.Reports));
        Assert.DoesNotContain("11", picture.AlternativeText + string.Concat(picture.Spots.Select(spot => spot.Latest)), StringComparison.Ordinal);
        Assert.Contains(picture.Spots, spot => spot.Latest.Contains("stay off", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Picture_RequiredLines_AreTheFiguresOfTheReplyWithTheirSources()
    {
        await ReportAsync("spot:\"north bay\" clear:9in");

        // 4 in Minnesota DNR; 6 in on foot and 10 in for a group, New Hampshire Fish and Game.
        var usual = await PictureAsync();
        Assert.Equal(["stay off below 4 in", "one on foot 6 in", "a group, a sled 10 in"], usual.Required.Select(line => line.Label));
        Assert.Contains("New Hampshire Fish and Game", usual.Sources, StringComparison.Ordinal);
        Assert.Contains("No ice is safe", usual.Caution, StringComparison.Ordinal);

        await _room.SayAsync("/ice rules load:\"on foot\" thickness:8in reference:\"town notice of 2 Jan 2027\"");
        var stricter = await PictureAsync();
        Assert.Equal("one on foot 8 in", stricter.Required[1].Label);
        Assert.Contains("town notice of 2 Jan 2027", stricter.Sources, StringComparison.Ordinal);
    }

    // A platform's description of a file takes 1024 characters.
    [Fact]
    public async Task Picture_OfManySpots_ShowsTheFirstAndSaysThatThereAreMore()
    {
        for (var spot = 0; spot < 12; spot++)
        {
            await ReportAsync($"spot:\"the long point number {spot} by the old cabins\" holes:\"9 9 8 9 7 9 9 10 11 9in\" note:\"{new string('n', 200)}\"");
        }

        var picture = await PictureAsync();

        Assert.Equal(5, picture.Spots.Count);
        Assert.Contains("And 7 more spots.", picture.Beyond, StringComparison.Ordinal);
        Assert.InRange(picture.AlternativeText.Length, 1, 1024);
    }

    public ValueTask DisposeAsync() => _room.DisposeAsync();

    private async Task ReportAsync(string what)
    {
        await _room.SayAsync("/crew setup water:\"Loon Basin\"");
        Assert.Null((await _room.SayAsync($"/ice report water:\"Loon Basin\" {what}")).Problem);
        _room.Now += TimeSpan.FromHours(1);
    }

    private Task<Reply> BoardAsync() => _room.SayAsync("/ice board water:\"Loon Basin\"");

    private async Task<IceBoardPicture> PictureAsync() => Assert.IsType<IceBoardPicture>(Assert.Single((await BoardAsync()).Pictures).Compose!());
}
