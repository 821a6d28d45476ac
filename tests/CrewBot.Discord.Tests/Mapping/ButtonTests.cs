using CrewBot.Chat.Commands;
using static CrewBot.Discord.StandIn.InteractionMaker;
using static CrewBot.Discord.Tests.Mapping.SentAnswer;

namespace CrewBot.Discord.Tests.Mapping;

/// <summary>Buttons and lists under a card, and who sees what they answer.</summary>
public sealed class ButtonTests
{
    private static CancellationToken Limit => TestContext.Current.CancellationToken;

    [Fact(Timeout = 30_000)]
    public async Task Button_OnOnesOwnCard_ChangesTheCard()
    {
        await using var stage = await RoomStage.OpenAsync(Limit);
        var card = await stage.AskAsync(
            stage.Make.Command("rig", Subcommand("plan", Option("species", 3, "walleye"), Option("mood", 3, "neutral"))), Limit);
        var press = stage.Make.Button(IdOf(card, "Calmer"));
        press["message"]!["flags"] = Ephemeral;
        var update = await stage.AskAsync(press, Limit);

        Assert.Equal(7, update["type"]!.GetValue<int>());
        Assert.Contains("negative", Title(update), StringComparison.Ordinal);
        stage.CheckBodies();
    }

    [Fact(Timeout = 30_000)]
    public async Task Button_OnACardThatTheCrewSees_AnswersThePresserAlone()
    {
        await using var stage = await RoomStage.OpenAsync(Limit);
        var card = await stage.AskAsync(
            stage.Make.Command("rig", Subcommand("plan", Option("species", 3, "walleye"))), Limit);
        var answer = await stage.AskAsync(stage.Make.Button(IdOf(card, "Calmer")), Limit);

        Assert.Equal(4, answer["type"]!.GetValue<int>());
        Assert.Equal(Ephemeral, answer["data"]!["flags"]!.GetValue<int>());
    }

    [Fact(Timeout = 30_000)]
    public async Task Button_Share_PostsTheSameCardWithoutShare()
    {
        await using var stage = await RoomStage.OpenAsync(Limit);
        var card = await stage.AskAsync(
            stage.Make.Command("rig", Subcommand("plan", Option("species", 3, "lake trout"), Option("depth", 3, "60ft"))), Limit);
        var post = await stage.AskAsync(stage.Make.Button(IdOf(card, "Share")), Limit);

        Assert.Equal(Title(card), Title(post));
        Assert.Null(post["data"]!["flags"]);
        Assert.DoesNotContain("Share", Labels(post["data"]!));
        stage.CheckBodies();
    }

    [Theory(Timeout = 30_000)]
    [InlineData("2147483648", "/crew setup is for a crew's owner.")]
    [InlineData("32", null)]
    public async Task Button_OfAnOwnersCard_AsksWhatThePresserMay(string permissions, string? refusal)
    {
        using var file = new CrewFile();
        await using var stage = await RoomStage.OpenAsync(Limit, database: file.Path);
        stage.Commands.Work = static (_, _) => Task.FromResult(new Reply
        {
            Headline = "For the owner",
            Actions = [new ReplyAction("Add it", ActionKind.Run, "crew setup", new Dictionary<string, string> { ["water"] = "Loon Basin" })],
            Audience = Audience.Crew,
        });
        var card = await stage.AskAsync(stage.Make.Command("test", Subcommand("try")), Limit);
        var press = stage.Make.Button(IdOf(card, "Add it"));
        press["member"]!["permissions"] = permissions;
        var answer = await stage.AskAsync(press, Limit);

        Assert.Equal(refusal, refusal is null ? null : Description(answer));
        Assert.Equal(refusal is null, answer["data"]!["embeds"]![0]!["title"] is not null);
    }

    [Fact(Timeout = 30_000)]
    public async Task Button_Why_ShowsTheReasonsToThePresser()
    {
        await using var stage = await RoomStage.OpenAsync(Limit);
        stage.Commands.Work = static (_, _) => Task.FromResult(new Reply
        {
            Headline = "Answer",
            Lines = ["short"],
            Reasons = ["because of the depth"],
            Actions = [new ReplyAction("Why", ActionKind.Why, TestCommands.Path, Words("x"))],
        });
        var card = await stage.AskAsync(stage.Make.Command("test", Subcommand("try", Option("word", 3, "x"))), Limit);
        var why = await stage.AskAsync(stage.Make.Button(IdOf(card, "Why")), Limit);

        Assert.Equal("because of the depth", Description(why));
        Assert.Equal(Ephemeral, why["data"]!["flags"]!.GetValue<int>());
    }

    [Theory(Timeout = 30_000)]
    [InlineData("trip:v0:42:join")]
    [InlineData("")]
    [InlineData("1R*unknown-key")]
    [InlineData("1Rzzrig_plan~0walleye")]
    [InlineData("1R")]
    public async Task Button_OldOrForeign_GetsAPoliteLine(string id)
    {
        await using var stage = await RoomStage.OpenAsync(Limit);
        var answer = await stage.AskAsync(stage.Make.Button(id), Limit);

        Assert.Contains("Ask again", Description(answer), StringComparison.Ordinal);
        Assert.Equal(Ephemeral, answer["data"]!["flags"]!.GetValue<int>());
    }

    [Fact(Timeout = 30_000)]
    public async Task List_OfManyActions_IsAnsweredLikeAButton()
    {
        await using var stage = await RoomStage.OpenAsync(Limit);
        stage.Commands.Work = static (request, _) => Task.FromResult(new Reply
        {
            Headline = request.Written.GetValueOrDefault("word", "none"),
            Actions = [.. Enumerable.Range(1, 20).Select(number =>
                new ReplyAction($"No. {number}", ActionKind.Run, TestCommands.Path, Words($"choice{number}")))],
        });
        var card = await stage.AskAsync(stage.Make.Command("test", Subcommand("try")), Limit);
        var rows = card["data"]!["components"]!.AsArray();
        Assert.Equal([5, 5, 1], rows.Select(row => row!["components"]!.AsArray().Count));
        var list = rows[2]!["components"]![0]!;
        var last = list["options"]!.AsArray()[^1]!["value"]!.GetValue<string>();

        var answer = await stage.AskAsync(stage.Make.Select(list["custom_id"]!.GetValue<string>(), last), Limit);
        Assert.Equal("choice20", Title(answer));
        stage.CheckBodies();
    }

    [Fact(Timeout = 30_000)]
    public async Task Choice_OfAReplysOwnList_RunsItsCommand()
    {
        await using var stage = await RoomStage.OpenAsync(Limit);
        stage.Commands.Work = static (request, _) => Task.FromResult(new Reply
        {
            Headline = request.Written.GetValueOrDefault("word", "none"),
            Choices = [ReplyChoice.Of("Which fish", TestCommands.Path, Words("any"), TestCommands.Word, [("A pike", "pike"), ("A perch", "perch")])],
        });
        var card = await stage.AskAsync(stage.Make.Command("test", Subcommand("try")), Limit);
        var list = card["data"]!["components"]![0]!["components"]![0]!;
        Assert.Equal("Which fish", list["placeholder"]!.GetValue<string>());

        var chosen = list["options"]![1]!["value"]!.GetValue<string>();
        Assert.Equal("perch", Title(await stage.AskAsync(stage.Make.Select(list["custom_id"]!.GetValue<string>(), chosen), Limit)));
        stage.CheckBodies();
    }

    private static Dictionary<string, string> Words(string word) => new() { ["word"] = word };
}
