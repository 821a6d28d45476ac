using CrewBot.Chat.Commands;
using CrewBot.Discord.StandIn;
using static CrewBot.Discord.Tests.Mapping.SentAnswer;

namespace CrewBot.Discord.Tests.Mapping;

/// <summary>Commands in the menu of a message and of a person.</summary>
public sealed class MenuTests
{
    private static CancellationToken Limit => TestContext.Current.CancellationToken;

    [Fact(Timeout = 30_000)]
    public async Task MessageMenu_GivesTheCommandWhatTheMessageHolds()
    {
        await using var stage = await RoomStage.OpenAsync(Limit);
        Request? seen = null;
        stage.Commands.Work = (request, _) =>
        {
            seen = request;
            return Task.FromResult(new Reply { Headline = "Read" });
        };
        var call = stage.Make.MessageCommand("Try this message", "a walleye", photo: "https://files.example/catch.jpg?ex=1");
        await stage.AskAsync(call, Limit);

        Assert.Equal("a walleye", seen!.Written["word"]);
        Assert.Equal("Ada of Loon Basin", seen.Written["author"]);
        Assert.Equal("2026-11-25T07:00:00Z", seen.Written["sent"]);
        Assert.EndsWith("/1300000000000000001", seen.Written["link"], StringComparison.Ordinal);
        var photo = Attachment.Of(new Uri(seen.Written["photo"]));
        Assert.Equal("https://files.example/catch.jpg?ex=1", photo.Address.AbsoluteUri);
        Assert.Equal(("1500000000000000001", "catch.jpg", "image/jpeg", 204800), (photo.Id, photo.Name, photo.ContentType, photo.Size));
    }

    [Fact(Timeout = 30_000)]
    public async Task MessageMenu_MessageLacksWhatIsNeeded_OpensAFormFilledInAsFarAsItSays()
    {
        await using var stage = await RoomStage.OpenAsync(Limit);
        var direct = await stage.AskAsync(stage.Make.MessageCommand("Plan a rig", "walleye 24ft negative"), Limit);
        Assert.Contains("Walleye", Title(direct), StringComparison.Ordinal);

        var form = await stage.AskAsync(stage.Make.MessageCommand("Plan a rig", "anything in 24ft, -12C?"), Limit);
        Assert.Equal(9, form["type"]!.GetValue<int>());
        var fields = form["data"]!["components"]!.AsArray().Select(label => label!["component"]!).ToList();
        Assert.Equal(["species", "depth", "mood"], fields.Select(field => field["custom_id"]!.GetValue<string>()));
        Assert.Equal("24ft", fields[1]["value"]!.GetValue<string>());

        var answer = await stage.AskAsync(
            stage.Make.Modal(IdOf(form), ("species", "burbot"), ("depth", "30ft"), ("mood", ""), ("step", "3")), Limit);
        Assert.Contains("Burbot", Title(answer), StringComparison.Ordinal);
        Assert.Contains("30 ft", Title(answer), StringComparison.Ordinal);
        stage.CheckBodies();
    }

    [Fact(Timeout = 30_000)]
    public async Task PersonMenu_GivesTheCommandThePerson()
    {
        await using var stage = await RoomStage.OpenAsync(Limit);
        stage.Commands.Work = static (request, _) => Task.FromResult(new Reply { Headline = request.Written["who"] });
        var answer = await stage.AskAsync(stage.Make.UserCommand("Try this person", 1100000000000000009), Limit);
        Assert.Equal("\\<@\u200B1100000000000000009>", Title(answer));

        var gone = await stage.AskAsync(stage.Make.UserCommand("Weigh this one", StandInData.PersonId), Limit);
        Assert.Contains("gone", Description(gone), StringComparison.Ordinal);
        stage.CheckBodies();
    }

    [Fact(Timeout = 30_000)]
    public async Task PersonMenu_BestFish_ShowsThatPersonsLongest()
    {
        using var file = new CrewFile();
        await using var stage = await RoomStage.OpenAsync(Limit, database: file.Path);
        await stage.AskAsync(stage.Log("walleye"), Limit);
        var best = await stage.AskAsync(stage.Make.UserCommand("Best fish", StandInData.PersonId), Limit);

        Assert.Contains("20 in", best["data"]!["embeds"]![0]!.ToJsonString(), StringComparison.Ordinal);
        stage.CheckBodies();
    }
}
