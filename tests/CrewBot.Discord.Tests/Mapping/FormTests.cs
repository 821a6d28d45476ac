using CrewBot.Chat.Commands;
using static CrewBot.Discord.StandIn.InteractionMaker;
using static CrewBot.Discord.Tests.Mapping.SentAnswer;

namespace CrewBot.Discord.Tests.Mapping;

/// <summary>Forms for what a command lacks, and what is taken of what comes back.</summary>
public sealed class FormTests
{
    private static CancellationToken Limit => TestContext.Current.CancellationToken;

    [Fact(Timeout = 30_000)]
    public async Task Command_WithoutWhatItNeeds_OpensAFormWhoseWordsAreAnswered()
    {
        await using var stage = await RoomStage.OpenAsync(Limit);
        var form = await stage.AskAsync(stage.Make.Command("rig", Subcommand("plan", Option("depth", 3, "24ft"))), Limit);
        Assert.Equal(9, form["type"]!.GetValue<int>());
        var field = form["data"]!["components"]![0]!["component"]!["custom_id"]!.GetValue<string>();

        var answer = await stage.AskAsync(
            stage.Make.Modal(form["data"]!["custom_id"]!.GetValue<string>(), (field, "walleye negative")), Limit);
        Assert.Contains("Walleye", Title(answer), StringComparison.Ordinal);
        Assert.Contains("24 ft", Title(answer), StringComparison.Ordinal);
        stage.CheckBodies();
    }

    [Fact(Timeout = 30_000)]
    public async Task Form_OpenedByAButton_StartsWithWhatIsKnownAndTakesOnlyItsFields()
    {
        await using var stage = await RoomStage.OpenAsync(Limit);
        stage.Commands.Work = static (request, _) => Task.FromResult(new Reply
        {
            Headline = string.Join(" ", request.Written.Select(option => $"{option.Key}={option.Value}")),
            Actions = [ReplyAction.Form("Correct", TestCommands.Path, new Dictionary<string, string> { ["word"] = "roach", ["other"] = "kept" }, TestCommands.Word)],
        });
        var card = await stage.AskAsync(stage.Make.Command("test", Subcommand("try")), Limit);
        var form = await stage.AskAsync(stage.Make.Button(IdOf(card, "Correct")), Limit);
        Assert.Equal(9, form["type"]!.GetValue<int>());
        var field = Assert.Single(form["data"]!["components"]!.AsArray())!["component"]!;
        Assert.Equal("roach", field["value"]!.GetValue<string>());

        var answer = await stage.AskAsync(stage.Make.Modal(IdOf(form), ("word", "rudd"), ("author", "somebody")), Limit);
        Assert.Equal("other=kept word=rudd", Title(answer));
        stage.CheckBodies();
    }
}
