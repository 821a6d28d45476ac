using System.Text.Json.Nodes;
using CrewBot.Discord.StandIn;
using static CrewBot.Discord.StandIn.InteractionMaker;

namespace CrewBot.EndToEnd.Tests.DiscordRooms;

public sealed class JoinedTests
{
    private const int Ephemeral = 64;

    private static CancellationToken Limit => TestContext.Current.CancellationToken;

    /// <summary>The session that docs/discord-setup.md writes out.</summary>
    [Fact(Timeout = 120_000)]
    public async Task Session_CommandAutocompleteButtonFormAndMenu_AreAllAnswered()
    {
        var (worker, socket) = await JoinedWorker.JoinAsync(Limit);
        await using var _ = worker;

        var offered = await worker.AskAsync(
            socket, worker.Make.Autocomplete("rig", Subcommand("plan", Option("species", 3, "wal", focused: true))), Limit);
        Assert.Equal("walleye", offered["data"]!["choices"]![0]!["value"]!.GetValue<string>());

        var card = await worker.AskAsync(
            socket, worker.Make.Command("rig", Subcommand("plan", Option("species", 3, "walleye"), Option("depth", 3, "24ft"))), Limit);
        Assert.Contains("Walleye", Title(card), StringComparison.Ordinal);

        var press = worker.Make.Button(IdOf(card, "Calmer"));
        press["message"]!["flags"] = Ephemeral;
        var calmer = await worker.AskAsync(socket, press, Limit);
        Assert.Equal(7, calmer["type"]!.GetValue<int>());
        Assert.Contains("negative", Title(calmer), StringComparison.Ordinal);

        var form = await worker.AskAsync(socket, worker.Make.Command("rig", Subcommand("plan")), Limit);
        Assert.Equal(9, form["type"]!.GetValue<int>());
        var answer = await worker.AskAsync(
            socket, worker.Make.Modal(form["data"]!["custom_id"]!.GetValue<string>(), ("ask", "perch 18ft")), Limit);
        Assert.Contains("erch", Title(answer), StringComparison.Ordinal);

        var menu = await worker.AskAsync(socket, worker.Make.MessageCommand("Plan a rig", "pike 12ft"), Limit);
        Assert.Contains("ike", Title(menu), StringComparison.Ordinal);
    }

    [Fact(Timeout = 120_000)]
    public async Task Connection_IsCut_ComesBackAndAnswersWhatWasMissed()
    {
        var (worker, socket) = await JoinedWorker.JoinAsync(Limit);
        await using var _ = worker;

        // Only a client that has taken its session in can resume it: an answer shows that it has.
        await worker.AskAsync(socket, worker.Make.Command("rig", Subcommand("plan", Option("species", 3, "perch"))), Limit);
        var missed = worker.Make.Command("rig", Subcommand("plan", Option("species", 3, "burbot")));
        socket.Session!.Add("INTERACTION_CREATE", missed.ToJsonString());
        socket.Cut();

        var answer = await worker.Server.NextAnswerAsync(missed, Limit);
        Assert.Contains("Burbot", Title(answer), StringComparison.Ordinal);
        Assert.Equal(1, worker.Server.Identifies);
    }

    [Fact(Timeout = 120_000)]
    public async Task Terminated_LeavesTheSessionResumableAndEndsWell()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "There is no SIGTERM.");
        var (worker, socket) = await JoinedWorker.JoinAsync(Limit);
        await using var _ = worker;
        await worker.AskAsync(socket, worker.Make.Command("rig", Subcommand("plan", Option("species", 3, "perch"))), Limit);

        worker.Terminate();
        var (code, output, error) = await worker.EndAsync(Limit);
        await socket.Ended;
        Assert.Equal(0, code);
        Assert.Equal(4000, socket.ClientCloseCode);
        Assert.DoesNotContain("marker-token", output + error, StringComparison.Ordinal);
    }

    [Fact(Timeout = 120_000)]
    public async Task StartedAgain_AnswersWhatWasWrittenInBetween()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "There is no SIGTERM.");
        var folder = Directory.CreateTempSubdirectory("crewbot-again-");
        await using var server = await StandInServer.StartAsync();
        var database = Path.Combine(folder.FullName, "crew.db");
        var (first, socket) = await JoinedWorker.JoinAsync(server, database, Limit);
        await using (first)
        {
            await first.AskAsync(socket, first.Make.Command("catch", Subcommand("log", Option("species", 3, "perch"), Option("length", 3, "11in"))), Limit);
            first.Terminate();
            Assert.Equal(0, (await first.EndAsync(Limit)).Code);
        }

        var written = server.Interactions.DirectMessage("log walleye 22.5in released");
        socket.Session!.Add("MESSAGE_CREATE", written.ToJsonString());
        var (second, again) = await JoinedWorker.JoinAsync(server, database, Limit);
        await using (second)
        {
            var answer = await server.NextRequestAsync($"channels/{written["channel_id"]}/messages", Limit);
            Assert.Contains("alleye", answer.Json!.ToJsonString(), StringComparison.Ordinal);
            Assert.Same(socket.Session, again.Session);
        }

        folder.Delete(recursive: true);
    }

    [Fact(Timeout = 120_000)]
    public async Task Token_IsRefused_EndsWithCodeThreeAndOneLine()
    {
        await using var worker = await JoinedWorker.StartAsync(token: "not.the.token");
        var (code, _, error) = await worker.EndAsync(Limit);

        Assert.Equal(3, code);
        var line = Assert.Single(
            error.Split('\n', StringSplitOptions.RemoveEmptyEntries), line => line.StartsWith("The platform", StringComparison.Ordinal));
        Assert.Contains("token", line, StringComparison.Ordinal);
        Assert.DoesNotContain("not.the.token", error, StringComparison.Ordinal);
    }

    [Fact(Timeout = 120_000)]
    public async Task SelfCheck_AllIsWell_SaysSoLineByLine()
    {
        await using var worker = await JoinedWorker.StartAsync(token: null, "selfcheck");
        var (code, output, _) = await worker.EndAsync(Limit);

        Assert.Equal(0, code);
        Assert.Contains("configuration: ok", output, StringComparison.Ordinal);
        Assert.Contains($"API at {worker.Server.ApiAddress}: ok", output, StringComparison.Ordinal);
        Assert.Contains("clock: ok", output, StringComparison.Ordinal);
    }

    [Fact(Timeout = 120_000)]
    public async Task SelfCheck_TokenIsRefused_SaysWhatToDo()
    {
        await using var worker = await JoinedWorker.StartAsync(token: "not.the.token", "selfcheck");
        var (code, output, _) = await worker.EndAsync(Limit);

        Assert.Equal(1, code);
        Assert.Contains("refuses the bot token; reset it", output, StringComparison.Ordinal);
        Assert.DoesNotContain("not.the.token", output, StringComparison.Ordinal);
    }

    private static string Title(JsonNode answer) => answer["data"]!["embeds"]![0]!["title"]!.GetValue<string>();

    private static string IdOf(JsonNode answer, string label) => answer["data"]!["components"]!.AsArray()
        .SelectMany(row => row!["components"]!.AsArray())
        .Single(button => button!["label"]!.GetValue<string>() == label)!["custom_id"]!.GetValue<string>();
}
