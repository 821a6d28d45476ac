using System.Text.Json.Nodes;
using CrewBot.Chat.Commands;
using static CrewBot.Discord.StandIn.InteractionMaker;
using static CrewBot.Discord.Tests.Mapping.SentAnswer;

namespace CrewBot.Discord.Tests.Mapping;

/// <summary>Buttons and forms of commands that are longer than the hundred characters of an id.</summary>
public sealed class LongButtonTests : IDisposable
{
    private const string OtherGuild = "1100000000000000009";

    private static readonly string Long = string.Concat(Enumerable.Repeat("a word of many ", 12)).Trim();

    private readonly CrewFile _file = new();

    private static CancellationToken Limit => TestContext.Current.CancellationToken;

    public void Dispose() => _file.Dispose();

    [Fact(Timeout = 30_000)]
    public async Task Button_AfterARestart_RunsItsCommand()
    {
        var id = IdOf(await ShownAsync(), "Go");
        await using var stage = await OpenAsync();

        Assert.Equal(Long, Title(await stage.AskAsync(stage.Make.Button(id), Limit)));
    }

    [Fact(Timeout = 30_000)]
    public async Task Form_OpenAcrossARestart_IsTakenWithWhatItDidNotAsk()
    {
        string form;
        await using (var stage = await OpenAsync())
        {
            stage.Commands.Work = static (_, _) => Task.FromResult(new Reply
            {
                Headline = "Ask",
                Actions = [ReplyAction.Form("Correct", TestCommands.Path, new Dictionary<string, string> { ["other"] = Long }, TestCommands.Word)],
            });
            var card = await stage.AskAsync(stage.Make.Command("test", Subcommand("try")), Limit);
            form = IdOf(await stage.AskAsync(stage.Make.Button(IdOf(card, "Correct")), Limit));
        }

        await using var after = await OpenAsync();
        after.Commands.Work = static (request, _) => Task.FromResult(new Reply { Headline = $"{request.Written["word"]}, {request.Written["other"]}" });
        Assert.Equal($"rudd, {Long}", Title(await after.AskAsync(after.Make.Modal(form, ("word", "rudd")), Limit)));
    }

    [Fact(Timeout = 30_000)]
    public async Task Button_PressedInAnotherCrewAfterARestart_IsUnknownThere()
    {
        var id = IdOf(await ShownAsync(), "Go");
        await using var stage = await OpenAsync();
        var press = stage.Make.Button(id);
        press["guild_id"] = OtherGuild;

        Assert.Contains("Ask again", (await stage.AskAsync(press, Limit))["data"]!.ToJsonString(), StringComparison.Ordinal);
    }

    [Fact(Timeout = 30_000)]
    public async Task Button_AWeekLater_IsTooOld()
    {
        var id = IdOf(await ShownAsync(), "Go");
        await using var stage = await OpenAsync(new LaterClock(TimeSpan.FromDays(8)));

        Assert.Contains("Ask again", (await stage.AskAsync(stage.Make.Button(id), Limit))["data"]!.ToJsonString(), StringComparison.Ordinal);
    }

    [Fact(Timeout = 30_000)]
    public async Task Button_NothingCanBeStored_WorksAsLongAsTheProcess()
    {
        await using var stage = await RoomStage.OpenAsync(Limit);
        Bend(stage);
        var card = await stage.AskAsync(stage.Make.Command("test", Subcommand("try")), Limit);

        Assert.Equal(Long, Title(await stage.AskAsync(stage.Make.Button(IdOf(card, "Go")), Limit)));
        await stage.Logs.LineAsync("work until this process ends", Limit);
    }

    private async Task<JsonNode> ShownAsync()
    {
        await using var stage = await OpenAsync();
        var card = await stage.AskAsync(stage.Make.Command("test", Subcommand("try")), Limit);
        stage.CheckBodies();
        await stage.StopAsync();
        await stage.Run;
        return card;
    }

    private async Task<RoomStage> OpenAsync(TimeProvider? clock = null)
    {
        var stage = await RoomStage.OpenAsync(Limit, clock, database: _file.Path);
        Bend(stage);
        return stage;
    }

    private static void Bend(RoomStage stage) => stage.Commands.Work = (request, _) => Task.FromResult(new Reply
    {
        Headline = request.Written.GetValueOrDefault("word", "none"),
        Actions = [new ReplyAction("Go", ActionKind.Run, TestCommands.Path, new Dictionary<string, string> { ["word"] = Long })],
    });

    private sealed class LaterClock(TimeSpan later) : TimeProvider
    {
        public override DateTimeOffset GetUtcNow() => base.GetUtcNow() + later;
    }
}
