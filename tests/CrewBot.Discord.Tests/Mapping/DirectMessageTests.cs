using System.Text.Json.Nodes;
using CrewBot.Discord.StandIn;
using static CrewBot.Discord.StandIn.InteractionMaker;

namespace CrewBot.Discord.Tests.Mapping;

/// <summary>What a person writes to the bot alone, and what it says to that.</summary>
public sealed class DirectMessageTests : IDisposable
{
    private const string OtherGuild = "1100000000000000009";

    private readonly CrewFile _file = new();

    private static CancellationToken Limit => TestContext.Current.CancellationToken;

    public void Dispose() => _file.Dispose();

    [Fact(Timeout = 30_000)]
    public async Task Message_ARigInBareWords_IsAnsweredUnderIt()
    {
        await using var stage = await RoomStage.OpenAsync(Limit);
        var message = stage.Make.DirectMessage("walleye 24ft negative");
        var answer = await stage.WriteAsync(message, Limit);

        Assert.Contains("Walleye", TitleOf(answer), StringComparison.Ordinal);
        Assert.Equal(message["id"]!.GetValue<string>(), answer.Json!["message_reference"]!["message_id"]!.GetValue<string>());
        Assert.Null(answer.Json["flags"]);
        stage.CheckBodies();
    }

    [Fact(Timeout = 30_000)]
    public async Task Message_Shorthand_LogsForTheCrewThatThePersonIsIn()
    {
        await using var stage = await RoomStage.OpenAsync(Limit, database: _file.Path);
        await LogInGuildAsync(stage);
        var answer = await stage.WriteAsync(stage.Make.DirectMessage("log walleye 22.5in 24ft released"), Limit);
        Assert.Contains("walleye", TitleOf(answer), StringComparison.OrdinalIgnoreCase);

        var best = await stage.AskAsync(stage.Make.Command("catch", Subcommand("best")), Limit);
        Assert.Contains("22.5 in", best["data"]!["embeds"]![0]!.ToJsonString(), StringComparison.Ordinal);
        stage.CheckBodies();
    }

    [Theory(Timeout = 30_000)]
    [InlineData("ice bord", "Nearest: /ice board water:")]
    [InlineData("undo", "There is no command 'undo'. Nearest: /catch void catch:41")]
    public async Task Message_AnotherWordForACommand_IsToldWhatToType(string said, string told)
    {
        await using var stage = await RoomStage.OpenAsync(Limit, database: _file.Path);
        var answer = await stage.WriteAsync(stage.Make.DirectMessage(said), Limit);

        Assert.Contains(told, TextOf(answer), StringComparison.Ordinal);
    }

    [Fact(Timeout = 30_000)]
    public async Task Message_DeliveredTwice_IsLoggedAndAnsweredOnce()
    {
        await using var stage = await RoomStage.OpenAsync(Limit, database: _file.Path);
        await LogInGuildAsync(stage);
        var message = stage.Make.DirectMessage("log walleye 22.5in 24ft");
        await stage.WriteAsync(message, Limit);
        var second = stage.Make.DirectMessage("/catch list");
        await stage.WriteAsync(message, second, Limit);

        Assert.Equal(2, stage.Server.Requests.Count(request => request.Path.EndsWith("/messages", StringComparison.Ordinal)));
    }

    [Fact(Timeout = 30_000)]
    public async Task Message_FromSomebodyWhoLeftTheCrew_ReachesNothingOfIt()
    {
        await using var stage = await RoomStage.OpenAsync(Limit, database: _file.Path);
        await LogInGuildAsync(stage);
        stage.Server.Faults.Next("/members/", CannedReply.Refusal(404, 10007, "Unknown Member"));
        var answer = await stage.WriteAsync(stage.Make.DirectMessage("/catch list"), Limit);

        Assert.Contains("/catch list needs a crew", TextOf(answer), StringComparison.Ordinal);
    }

    [Fact(Timeout = 30_000)]
    public async Task Message_FromSomebodyInTwoCrews_SaysWhichCrewWasMeant()
    {
        await using var stage = await RoomStage.OpenAsync(Limit, database: _file.Path);
        await LogInGuildAsync(stage);
        var other = stage.Make.Command("catch", Subcommand("log", Option("species", 3, "burbot")));
        other["guild_id"] = OtherGuild;
        await stage.AskAsync(other, Limit);
        var answer = await stage.WriteAsync(stage.Make.DirectMessage("/catch list"), Limit);

        Assert.Contains("you belong to others too", TextOf(answer), StringComparison.Ordinal);
        Assert.Contains("urbot", answer.Json!.ToJsonString(), StringComparison.Ordinal);
    }

    [Theory(Timeout = 30_000)]
    [InlineData("/trip plan water:\"Loon Basin\" meet:07:00", "/trip plan works inside a crew's own chat, not in a direct message.")]
    [InlineData("/nosuch thing", "There is no command")]
    [InlineData("", "Nothing to answer")]
    public async Task Message_ThatCannotBeAnswered_GetsOneLine(string text, string expected)
    {
        await using var stage = await RoomStage.OpenAsync(Limit, database: _file.Path);
        await LogInGuildAsync(stage);
        var line = TextOf(await stage.WriteAsync(stage.Make.DirectMessage(text), Limit));

        Assert.Contains(expected, line, StringComparison.Ordinal);
        Assert.DoesNotContain('\n', line);
    }

    [Fact(Timeout = 30_000)]
    public async Task Message_OfTheBotItself_IsPassedOver()
    {
        await using var stage = await RoomStage.OpenAsync(Limit);
        var own = stage.Make.DirectMessage("walleye 24ft negative");
        own["author"] = StandInData.BotUser(42);
        await stage.WriteAsync(own, stage.Make.DirectMessage("pike"), Limit);

        Assert.Equal(1, stage.Server.Requests.Count(request => request.Path.EndsWith("/messages", StringComparison.Ordinal)));
    }

    [Fact(Timeout = 30_000)]
    public async Task Command_InADirectMessage_SpeaksForTheCrewThatThePersonIsIn()
    {
        await using var stage = await RoomStage.OpenAsync(Limit, database: _file.Path);
        await LogInGuildAsync(stage);
        var list = await stage.AskAsync(InDirectMessage(stage.Make.Command("catch", Subcommand("list"))), Limit);

        Assert.Contains("20 in", list["data"]!["embeds"]![0]!.ToJsonString(), StringComparison.Ordinal);
    }

    [Fact(Timeout = 30_000)]
    public async Task Attachment_OfAnImport_IsReadTriedAndWritten()
    {
        await using var stage = await RoomStage.OpenAsync(Limit, database: _file.Path);
        var address = new Uri(stage.Server.ApiAddress, "files/catches.csv").AbsoluteUri;
        stage.Server.Faults.Next(
            "files/catches.csv",
            new CannedReply(200)
            {
                Body = "caught_at,species,length,length_unit\n2026-01-03T10:00:00Z,walleye,21.5,in\n2026-01-03T11:00:00Z,unicorn,9,in\n",
                ContentType = "text/csv",
            },
            times: 2);
        var tried = await stage.AskAsync(ImportOf(stage, address), Limit);
        var written = await stage.AskAsync(ImportOf(stage, address, Option("confirm", 3, "yes")), Limit);

        Assert.Contains("unicorn", tried["data"]!.ToJsonString(), StringComparison.Ordinal);
        Assert.Contains("1", written["data"]!["embeds"]![0]!["title"]!.GetValue<string>(), StringComparison.Ordinal);
        var list = await stage.AskAsync(stage.Make.Command("catch", Subcommand("list")), Limit);
        Assert.Contains("21.5 in", list["data"]!["embeds"]![0]!.ToJsonString(), StringComparison.Ordinal);
    }

    private static JsonObject ImportOf(RoomStage stage, string address, params JsonObject[] more)
    {
        var command = WithFile(
            stage.Make.Command("catch", Subcommand("import", [Option("file", 11, "1500000000000000001"), .. more])), address);
        command["member"]!["permissions"] = "32"; // manages the server
        return command;
    }

    private static Task<JsonNode> LogInGuildAsync(RoomStage stage) => stage.AskAsync(stage.Log("walleye"), Limit);

    private static string TitleOf(RecordedRequest post) => post.Json!["embeds"]![0]!["title"]!.GetValue<string>();

    private static string TextOf(RecordedRequest post) => post.Json!["embeds"]![0]!["description"]!.GetValue<string>();
}
