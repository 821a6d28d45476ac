using System.Text;
using Ical.Net;

namespace CrewBot.Chat.Tests.Trips;

/// <summary>The trip as a calendar file, read back by a calendar.</summary>
public sealed class TripFileTests : IAsyncDisposable
{
    private readonly CrewRoom _room = new();

    // Winnipeg is 6 hours behind UTC in winter and 5 in summer (IANA tz database); clocks went forward on 14 March 2027 at 02:00.
    [Theory]
    [InlineData("2027-03-13 07:00", "2027-03-13 16:00", "2027-03-13T13:00:00Z", "2027-03-13T22:00:00Z")]
    [InlineData("2027-03-13 18:00", "2027-03-14 10:00", "2027-03-14T00:00:00Z", "2027-03-14T15:00:00Z")]
    [InlineData("2027-03-14 07:00", "2027-03-14 16:00", "2027-03-14T12:00:00Z", "2027-03-14T21:00:00Z")]
    public async Task Calendar_AroundAClockChange_MeansTheSameInstants(string meet, string back, string start, string end)
    {
        await _room.SayAsync("crew setup zone:America/Winnipeg water:\"Loon Basin\"");
        await _room.SayAsync($"trip plan water:\"Loon Basin\" meet:\"{meet}\" return:\"{back}\" place:\"the north landing\" note:\"thermos; and a rope\"");

        var file = Assert.Single((await _room.SayAsync("trip calendar")).Files);

        Assert.Equal(("trip-1.ics", "text/calendar"), (file.Name, file.ContentType));
        var read = Assert.Single(Calendar.Load(Encoding.UTF8.GetString(file.Content.Span))!.Events);
        Assert.Equal(DateTime.Parse(start, System.Globalization.CultureInfo.InvariantCulture).ToUniversalTime(), read.Start!.AsUtc);
        Assert.Equal(DateTime.Parse(end, System.Globalization.CultureInfo.InvariantCulture).ToUniversalTime(), read.End!.AsUtc);
        Assert.Equal("America/Winnipeg", read.Start.TzId);
        Assert.Equal("Ice fishing: Loon Basin", read.Summary);
        Assert.Equal("the north landing", read.Location);
        Assert.Contains("thermos; and a rope", read.Description, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Calendar_TripWasChanged_KeepsItsName()
    {
        await _room.SayAsync("crew setup zone:America/Winnipeg water:\"Loon Basin\"");
        await _room.SayAsync("trip plan water:\"Loon Basin\" meet:\"2027-03-13 07:00\"");
        var before = await FileAsync();
        await _room.SayAsync("trip change meet:\"2027-03-14 08:00\"");

        Assert.Equal(UidOf(before), UidOf(await FileAsync()));
        Assert.NotEqual(before, await FileAsync());
    }

    public ValueTask DisposeAsync() => _room.DisposeAsync();

    private async Task<string> FileAsync() => Encoding.UTF8.GetString((await _room.SayAsync("trip calendar")).Files[0].Content.Span);

    private static string UidOf(string file) => Assert.Single(Calendar.Load(file)!.Events).Uid!;
}
