using CrewBot.Chat.Commands;
using CrewBot.Discord.StandIn;
using static CrewBot.Discord.StandIn.InteractionMaker;
using static CrewBot.Discord.Tests.Mapping.SentAnswer;

namespace CrewBot.Discord.Tests.Mapping;

/// <summary>What a person asks by command, and what the platform is sent for it.</summary>
public sealed class RoomCommandTests
{
    private static CancellationToken Limit => TestContext.Current.CancellationToken;

    [Fact(Timeout = 30_000)]
    public async Task Command_AnsweredQuickly_GetsAPrivateCardWithButtons()
    {
        await using var stage = await RoomStage.OpenAsync(Limit);
        var answer = await stage.AskAsync(
            stage.Make.Command("rig", Subcommand(
                "plan", Option("species", 3, "walleye"), Option("depth", 3, "24ft"), Option("mood", 3, "negative"))),
            Limit);

        Assert.Equal(4, answer["type"]!.GetValue<int>());
        var data = answer["data"]!;
        Assert.Equal(Ephemeral, data["flags"]!.GetValue<int>());
        Assert.Equal("""{"parse":[]}""", data["allowed_mentions"]!.ToJsonString());
        Assert.Contains("Walleye", data["embeds"]![0]!["title"]!.GetValue<string>(), StringComparison.Ordinal);
        Assert.Contains("Share", Labels(data));
        Assert.Contains("Why", Labels(data));
        stage.CheckBodies();
    }

    [Fact(Timeout = 30_000)]
    public async Task Command_AnsweredWithAFile_AttachesIt()
    {
        await using var stage = await RoomStage.OpenAsync(Limit);
        stage.Commands.Work = (_, _) => Task.FromResult(new Reply
        {
            Headline = "The log",
            Files = [new ReplyFile("catches.csv", "text/csv", "species"u8.ToArray())],
        });
        await stage.AskAsync(stage.Make.Command("test", Subcommand("try")), Limit);

        var file = Assert.Single(stage.Server.Requests.Single(request => request.Files.Count > 0).Files);
        Assert.Contains("filename=catches.csv", file.Disposition, StringComparison.Ordinal);
        Assert.Equal("species"u8, file.Content);
        stage.CheckBodies();
    }

    [Fact(Timeout = 30_000)]
    public async Task Command_InADirectMessage_AnswersWhatNeedsNoCrew()
    {
        await using var stage = await RoomStage.OpenAsync(Limit);
        var answer = await stage.AskAsync(
            InDirectMessage(stage.Make.Command("rig", Subcommand("plan", Option("species", 3, "burbot")))), Limit);

        Assert.Contains("Burbot", Title(answer), StringComparison.Ordinal);
    }

    [Fact(Timeout = 30_000)]
    public async Task Command_DeliveredTwice_IsAnsweredOnce()
    {
        var handled = 0;
        await using var stage = await RoomStage.OpenAsync(Limit);
        stage.Commands.Work = (_, _) =>
        {
            Interlocked.Increment(ref handled);
            return Task.FromResult(new Reply { Headline = "Once" });
        };
        var command = stage.Make.Command("test", Subcommand("try"));
        await stage.SendAsync(command);
        await stage.AskAsync(command, Limit);
        await stage.AskAsync(stage.Make.Command("test", Subcommand("try")), Limit);

        Assert.Equal(2, handled);
        Assert.Equal(2, stage.Server.Requests.Count(IsCallback));
    }

    [Fact(Timeout = 30_000)]
    public async Task Command_HandlerThrows_TellsTheAsker()
    {
        await using var stage = await RoomStage.OpenAsync(Limit);
        stage.Commands.Work = static (_, _) => throw new InvalidOperationException("the auger is stuck");
        var answer = await stage.AskAsync(stage.Make.Command("test", Subcommand("try")), Limit);

        Assert.Equal(Ephemeral, answer["data"]!["flags"]!.GetValue<int>());
        Assert.DoesNotContain("auger", answer.ToJsonString(), StringComparison.Ordinal);
    }

    [Fact(Timeout = 30_000)]
    public async Task Command_MeantForTheCrew_IsPosted()
    {
        await using var stage = await RoomStage.OpenAsync(Limit);
        stage.Commands.Work = static (_, _) => Task.FromResult(new Reply { Headline = "Standings", Audience = Audience.Crew });
        var answer = await stage.AskAsync(stage.Make.Command("test", Subcommand("try")), Limit);

        Assert.Null(answer["data"]!["flags"]);
    }

    [Fact(Timeout = 30_000)]
    public async Task Command_WithAFileAndAPerson_GivesBothToTheCommand()
    {
        await using var stage = await RoomStage.OpenAsync(Limit);
        Request? seen = null;
        stage.Commands.Work = (request, _) =>
        {
            seen = request;
            return Task.FromResult(new Reply { Headline = "Read" });
        };
        var call = WithFile(
            stage.Make.Command("test", Subcommand("try", Option("who", 6, "1100000000000000009"), Option("photo", 11, "1500000000000000001"))),
            "https://files.example/catch.jpg");

        await stage.AskAsync(call, Limit);

        Assert.Equal("<@1100000000000000009>", seen!.Written["who"]);
        Assert.Equal(
            "https://files.example/catch.jpg#id=1500000000000000001&name=catch.jpg&type=image%2Fjpeg&size=204800", seen.Written["photo"]);
    }

    private static bool IsCallback(RecordedRequest request) =>
        request.Path.EndsWith("/callback", StringComparison.Ordinal);
}
