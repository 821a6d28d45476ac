using System.Text;
using CrewBot.Chat.Commands;

namespace CrewBot.Chat.Tests.Derbies;

/// <summary>One photo is one entry, under whatever link it comes.</summary>
public sealed class EnteredPhotoTests : IAsyncDisposable
{
    private readonly CrewRoom _room = new() { File = Encoding.ASCII.GetBytes("abc") };

    public ValueTask DisposeAsync() => _room.DisposeAsync();

    [Fact]
    public async Task Enter_SamePhotoUnderAnotherLink_IsNoticed()
    {
        await StartAsync();
        Assert.Null((await EnterAsync(1)).Problem);

        Assert.Equal("That photo is in Basin day already, with entry 1. If it is another fish, correct the photo with /catch edit.", (await EnterAsync(2)).Problem);
        Assert.Single(_room.Copies);
    }

    [Fact]
    public async Task Enter_SamePhotoByAnotherAngler_IsNoticed()
    {
        await StartAsync();
        await EnterAsync(1);

        Assert.StartsWith("That photo is in Basin day already, with entry 1.", (await EnterAsync(2, "Bo")).Problem, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Enter_PhotoOfAFishOfTheLog_PointsToThatFish()
    {
        await StartAsync();
        await _room.SayAsync($"/catch log species:walleye length:20in photo:{Photo(1)}");

        Assert.Equal(
            "That photo is logged already, as #1 for Ana: /derby enter catch:1 enters that fish. If it shows another, send it again with confirm:yes.",
            (await EnterAsync(2)).Problem);
        Assert.Null((await _room.SayAsync("/derby enter catch:1")).Problem);
        Assert.StartsWith("That photo is in Basin day already, with entry 1.", (await EnterAsync(3)).Problem, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Erase_WhoseFishAPhotoProved_LeavesItStanding()
    {
        await StartAsync();
        await EnterAsync(1, "Bo");
        await EnterAsync(2, "Bo");
        var before = (await _room.SayAsync("/derby standings")).Figures;

        await _room.SayAsync("/crew privacy do:erase confirm:yes", "Bo");

        var standings = await _room.SayAsync("/derby standings");
        Assert.Contains(before, figure => figure.Value > 0);
        Assert.Equal(before, standings.Figures);
        Assert.Contains("Nothing waits", (await _room.SayAsync("/derby rulings")).Headline, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Enter_TheSameFishTwiceWithinAMinute_AsksUnlessAPhotoTellsThemApart()
    {
        await StartAsync();
        const string Fish = "/derby enter species:walleye length:21in";

        Assert.Null((await _room.SayAsync(Fish)).Problem);
        Assert.StartsWith("That looks like #1, logged within the last minute.", (await _room.SayAsync(Fish)).Problem, StringComparison.Ordinal);
        Assert.Null((await _room.SayAsync($"{Fish} confirm:yes")).Problem);
        Assert.Null((await _room.SayAsync($"{Fish} photo:{Photo(1)}")).Problem);
    }

    [Fact]
    public async Task Enter_PhotoThatCannotBeHad_IsEnteredAndSaysSo()
    {
        await StartAsync();
        _room.FileFault = "The file could not be fetched from the platform: try again in a moment.";

        Assert.Contains((await EnterAsync(1)).Lines, line => line.StartsWith("The photo's link is kept; the photo itself was not looked at: ", StringComparison.Ordinal));
    }

    private async Task StartAsync()
    {
        await _room.SayAsync("/derby create name:\"Basin day\" ends:23:00 evidence:photo");
        await _room.SayAsync("/derby join");
        await _room.SayAsync("/derby join", "Bo");
        _room.Now += TimeSpan.FromHours(1);
    }

    private Task<Reply> EnterAsync(int id, string angler = "Ana") =>
        _room.SayAsync($"/derby enter species:walleye length:{20 + id}in photo:{Photo(id)}", angler);

    private static string Photo(int id) => new Attachment(new Uri($"https://files.example.test/{id}.jpg"), "fish.jpg") { Id = $"{id}", Size = 1000 }.Text;
}
