using System.Text.Json.Nodes;
using CrewBot.Discord.StandIn;
using CrewBot.Discord.Tests.Fakes;
using static CrewBot.Discord.StandIn.InteractionMaker;
using static CrewBot.Discord.Tests.Mapping.SentAnswer;

namespace CrewBot.Discord.Tests.Mapping;

/// <summary>How a crew's name comes in, which no interaction carries.</summary>
public sealed class CrewNamesTests : IDisposable
{
    private const string OtherGuild = "1100000000000000009";
    private const string OwnGuild = "1100000000000000001";

    private readonly CrewFile _file = new();

    private static CancellationToken Limit => TestContext.Current.CancellationToken;

    public void Dispose() => _file.Dispose();

    [Fact(Timeout = 30_000)]
    public async Task Share_BothServersAgree_ShowsTheirNamesToEachOther()
    {
        await using var stage = await RoomStage.OpenAsync(Limit, database: _file.Path);
        stage.Server.Settings.GuildNames[OtherGuild] = "Tamarack *Bay* Anglers";
        var offered = await stage.AskAsync(Share(stage, OwnGuild, OtherGuild), Limit);
        var agreed = await stage.AskAsync(Share(stage, OtherGuild, OwnGuild), Limit);
        var listed = await stage.AskAsync(Share(stage, OwnGuild), Limit);

        Assert.Equal($"Ice reports will be shared with crew {OtherGuild} once its owner agrees too.", Title(offered));
        Assert.Equal("Ice reports are shared with Loon Basin Crew.", Title(agreed));
        Assert.Contains(@"Tamarack \*Bay\* Anglers", Description(listed), StringComparison.Ordinal);
        stage.CheckBodies();
    }

    [Fact(Timeout = 30_000)]
    public async Task Command_ThatStoresSomething_AsksForTheNameOnceAndAQuestionNever()
    {
        await using var stage = await RoomStage.OpenAsync(Limit, database: _file.Path);
        await stage.AskAsync(stage.Make.Command("rig", Subcommand("plan", Option("species", 3, "walleye"))), Limit);
        Assert.Equal(0, stage.Server.Requests.Count(IsGuild));

        await LogAsync(stage);
        await LogAsync(stage);
        Assert.Equal(1, stage.Server.Requests.Count(IsGuild));
    }

    [Fact(Timeout = 30_000)]
    public async Task Command_PlatformDoesNotSayTheName_IsAnsweredAllTheSame()
    {
        await using var stage = await RoomStage.OpenAsync(Limit, database: _file.Path);
        stage.Server.Faults.Next($"guilds/{OwnGuild}", CannedReply.Refusal(404, 10004, "Unknown Guild"));

        Assert.Contains("alleye", Title(await LogAsync(stage)), StringComparison.Ordinal);
    }

    [Fact(Timeout = 30_000)]
    public async Task Command_PlatformNeverAnswersAboutTheName_IsDeferredAndAnsweredAfterTwoSeconds()
    {
        await using var stage = await RoomStage.OpenAsync(Limit, new HurriedClock(factor: 10), database: _file.Path);
        stage.Server.Faults.Next($"guilds/{OwnGuild}", new CannedReply(200) { Silent = true });
        var deferral = await LogAsync(stage);
        Assert.Equal(5, deferral["type"]!.GetValue<int>());

        var post = await stage.Server.NextRequestAsync("webhooks/", Limit);
        Assert.Contains("alleye", post.Json!["embeds"]![0]!["title"]!.GetValue<string>(), StringComparison.Ordinal);
    }

    [Fact(Timeout = 30_000)]
    public async Task Message_FromSomebodyInTwoCrews_NamesTheCrewThatWasMeant()
    {
        await using var stage = await RoomStage.OpenAsync(Limit, database: _file.Path);
        stage.Server.Settings.GuildNames[OtherGuild] = "Tamarack Bay Anglers";
        await LogAsync(stage);
        var other = stage.Make.Command("catch", Subcommand("log", Option("species", 3, "burbot")));
        other["guild_id"] = OtherGuild;
        await stage.AskAsync(other, Limit);
        var answer = await stage.WriteAsync(stage.Make.DirectMessage("/catch list"), Limit);

        Assert.Contains("For Tamarack Bay Anglers: you belong to others too.", answer.Json!["embeds"]![0]!["description"]!.GetValue<string>(), StringComparison.Ordinal);
    }

    private static bool IsGuild(RecordedRequest request) => request.Path == $"guilds/{OwnGuild}";

    private static JsonObject Share(RoomStage stage, string guild, string? with = null)
    {
        var command = stage.Make.Command("ice", Subcommand("share", with is null ? [] : [Option("crew", 3, with)]));
        command["guild_id"] = guild;
        command["member"]!["permissions"] = "32"; // manages the server
        return command;
    }

    private static Task<JsonNode> LogAsync(RoomStage stage) => stage.AskAsync(stage.Log("walleye"), Limit);
}
