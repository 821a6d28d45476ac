using System.Text.Json.Nodes;
using CrewBot.Chat.Commands;
using CrewBot.Discord.Tests.Fakes;
using static CrewBot.Discord.StandIn.InteractionMaker;
using static CrewBot.Discord.Tests.Mapping.SentAnswer;

namespace CrewBot.Discord.Tests.Mapping;

/// <summary>Pictures are drawn when their button is pressed, and come with their alternative text.</summary>
public sealed class PictureTests
{
    private static CancellationToken Limit => TestContext.Current.CancellationToken;

    [Fact(Timeout = 30_000)]
    public async Task Button_Picture_SendsItToThePresserWithItsDescription()
    {
        await using var stage = await RoomStage.OpenAsync(Limit);
        var answer = await PictureAsync(stage);

        var sent = stage.Server.Requests.Single(request => request.Files.Count > 0);
        Assert.Contains("filename=rig.png", Assert.Single(sent.Files).Disposition, StringComparison.Ordinal);
        var attachment = Assert.Single(answer["data"]!["attachments"]!.AsArray())!;
        Assert.Equal("""{"id":"0","filename":"rig.png","description":"A spoon on braid."}""", attachment.ToJsonString());
        Assert.Equal(Ephemeral, answer["data"]!["flags"]!.GetValue<int>());
        stage.CheckBodies();
    }

    [Fact(Timeout = 30_000)]
    public async Task Button_ShareUnderAPicture_PostsItForTheCrew()
    {
        await using var stage = await RoomStage.OpenAsync(Limit);
        var picture = await PictureAsync(stage);

        var post = await stage.AskAsync(stage.Make.Button(IdOf(picture, "Share")), Limit);

        Assert.Null(post["data"]!["flags"]);
        Assert.Equal("A spoon on braid.", post["data"]!["attachments"]![0]!["description"]!.GetValue<string>());
        stage.CheckBodies();
    }

    [Fact(Timeout = 30_000)]
    public async Task Button_PictureThatCannotBeDrawn_GivesTheWords()
    {
        await using var stage = await RoomStage.OpenAsync(Limit);
        stage.Commands.Drawer.Work = static (reply, _) => Task.FromResult(reply with { Lines = [.. reply.Lines, "No picture."] });

        var answer = await PictureAsync(stage);

        Assert.Null(answer["data"]!["attachments"]);
        Assert.Equal("Tie it on.\nNo picture.", answer["data"]!["embeds"]![0]!["description"]!.GetValue<string>());
        Assert.Equal(Ephemeral, answer["data"]!["flags"]!.GetValue<int>());
    }

    [Fact(Timeout = 30_000)]
    public async Task Button_PictureTakesLongerThanASecond_IsDeferredThenSent()
    {
        await using var stage = await RoomStage.OpenAsync(Limit, new HurriedClock(factor: 10));
        var finish = new TaskCompletionSource();
        var draw = stage.Commands.Drawer.Work;
        stage.Commands.Drawer.Work = async (reply, token) =>
        {
            await finish.Task;
            return await draw(reply, token);
        };
        var deferral = await PictureAsync(stage);
        Assert.Equal("""{"type":5,"data":{"flags":64}}""", deferral.ToJsonString());

        finish.SetResult();
        var edit = await stage.Server.NextRequestAsync("messages/@original", Limit);
        Assert.Single(edit.Files);
        Assert.Equal("A spoon on braid.", edit.Json!["attachments"]![0]!["description"]!.GetValue<string>());
        stage.CheckBodies();
    }

    private static async Task<JsonNode> PictureAsync(RoomStage stage)
    {
        stage.Commands.Work = static (request, _) => Task.FromResult(new Reply
        {
            Headline = "Rig",
            Lines = ["Tie it on."],
            Pictures = [new Picture { Kind = "rig", AlternativeText = "A spoon on braid." }],
            Actions = [ReplyAction.Picture(request)],
        });
        var card = await stage.AskAsync(stage.Make.Command("test", Subcommand("try", Option("word", 3, "x"))), Limit);
        return await stage.AskAsync(stage.Make.Button(IdOf(card, "Picture")), Limit);
    }
}
