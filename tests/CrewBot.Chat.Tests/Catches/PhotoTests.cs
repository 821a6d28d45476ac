using System.Text;
using CrewBot.Chat.Commands;

namespace CrewBot.Chat.Tests.Catches;

/// <summary>Photos that come with fish.</summary>
public sealed class PhotoTests : IAsyncDisposable
{
    // SHA-256 of "abc": FIPS 180-2, appendix B.1.
    private const string HashOfAbc = "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad";

    private readonly CrewRoom _room = new() { File = Encoding.ASCII.GetBytes("abc") };

    [Fact]
    public async Task Log_AttachedPhoto_IsKnownByWhatIsInItAndCopied()
    {
        await LogAsync(1);

        Assert.Equal([("tamarack", HashOfAbc)], _room.Copies);
        var again = await LogAsync(2);
        Assert.StartsWith("That photo is logged already, as #1 for Ana.", again.Problem, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Log_PhotoOfAnotherCrew_IsNotKnownHere()
    {
        await LogAsync(1);

        Assert.Null((await LogAsync(2, crew: "other")).Problem);
    }

    [Fact]
    public async Task Log_PhotoCannotBeHad_IsLoggedAllTheSameAndSaysSo()
    {
        _room.FileFault = "The file could not be fetched from the platform: try again in a moment.";

        var reply = await LogAsync(1);

        Assert.Null(reply.Problem);
        Assert.Contains(reply.Lines, line => line.StartsWith("The photo's link is kept; the photo itself was not looked at: ", StringComparison.Ordinal));
        Assert.Empty(_room.Copies);
    }

    [Fact]
    public async Task Log_PhotoTooLarge_IsLoggedWithoutLookingAtIt()
    {
        var reply = await LogAsync(1, size: 10_000_001);

        Assert.Contains("The photo's link is kept; the photo itself was not looked at: it is larger than 10 MB.", reply.Lines);
        Assert.Empty(_room.Copies);
    }

    [Fact]
    public async Task Log_MereLink_IsNotFollowed()
    {
        var reply = await _room.SayAsync("catch log species:walleye photo:https://example.test/1.jpg");

        Assert.Null(reply.Problem);
        Assert.DoesNotContain(reply.Lines, line => line.Contains("photo", StringComparison.Ordinal));
        Assert.Empty(_room.Copies);
    }

    [Fact]
    public async Task Erase_CopiesOfPhotos_GoAndAreCounted()
    {
        await LogAsync(1);
        _room.File = Encoding.ASCII.GetBytes("another");
        await _room.SayAsync($"catch edit catch:1 photo:{Photo(3, 1000)}");
        await LogAsync(4, species: "burbot", member: "Bo");
        Assert.Equal(3, _room.Copies.Count);

        var reply = await _room.SayAsync("crew privacy do:erase confirm:yes");

        // Bo's fish is on the second photo too, so that copy stays.
        Assert.Contains("Copies of photos that lay here and are deleted: 1.", reply.Lines);
        Assert.DoesNotContain(_room.Copies, copy => copy.Hash == HashOfAbc);
        Assert.NotEmpty(_room.Copies);
    }

    public ValueTask DisposeAsync() => _room.DisposeAsync();

    private Task<Reply> LogAsync(int id, long size = 1000, string species = "walleye", string member = "Ana", string crew = "tamarack")
    {
        _room.Now += TimeSpan.FromMinutes(5);
        return _room.SayAsync($"catch log species:{species} photo:{Photo(id, size)}{(member == "Bo" ? " confirm:yes" : "")}", member, crew: crew);
    }

    private static string Photo(int id, long size) => new Attachment(new Uri($"https://files.example.test/{id}.jpg"), "fish.jpg") { Id = $"{id}", Size = size }.Text;
}
