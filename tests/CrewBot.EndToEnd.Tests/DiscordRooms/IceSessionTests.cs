using System.Text.Json.Nodes;
using CrewBot.Discord.StandIn;
using static CrewBot.Discord.StandIn.InteractionMaker;

namespace CrewBot.EndToEnd.Tests.DiscordRooms;

/// <summary>One report in three crews' channels, corrected: all three copies change.</summary>
public sealed class IceSessionTests
{
    private static readonly ulong[] Guilds = [1100000000000000001, 1100000000000000101, 1100000000000000201];

    private static CancellationToken Limit => TestContext.Current.CancellationToken;

    [Fact(Timeout = 120_000)]
    public async Task Session_AReportIsCorrected_AllThreeCopiesChange()
    {
        var (worker, socket) = await JoinedWorker.JoinAsync(Limit);
        await using var _ = worker;
        Task<JsonNode> AskAsync(ulong guild, string family, string verb, params JsonObject[] options) =>
            worker.AskAsync(socket, InGuild(guild, worker.Make.Command(family, Subcommand(verb, options))), Limit);

        foreach (var guild in Guilds)
        {
            await AskAsync(guild, "crew", "setup", Option("water", 3, "Loon Basin"));
            await AskAsync(guild, "ice", "follow", Option("water", 3, "Loon Basin"));
        }

        foreach (var partner in Guilds[1..])
        {
            await AskAsync(Guilds[0], "ice", "share", Option("crew", 3, StandInData.Id(partner)));
            await AskAsync(partner, "ice", "share", Option("crew", 3, StandInData.Id(Guilds[0])));
        }

        await AskAsync(Guilds[0], "ice", "report", Option("water", 3, "Loon Basin"), Option("spot", 3, "north bay"), Option("clear", 3, "5in"));
        foreach (var guild in Guilds)
        {
            var relay = await SentAsync(worker.Server, "POST", guild);
            Assert.Contains("5 in", relay, StringComparison.Ordinal);
            Assert.Equal(guild == Guilds[0], relay.Contains("north bay", StringComparison.Ordinal));
            Assert.Equal(guild != Guilds[0], relay.Contains(" of Loon Basin Crew; measured ", StringComparison.Ordinal));
        }

        await AskAsync(
            Guilds[0], "ice", "correct", Option("report", 4, 1), Option("reason", 3, "read the tape wrong"), Option("clear", 3, "4in"));
        foreach (var guild in Guilds)
        {
            var edit = await SentAsync(worker.Server, "PATCH", guild);
            Assert.Contains("~~", edit, StringComparison.Ordinal);
            Assert.Contains("read the tape wrong", edit, StringComparison.Ordinal);
        }
    }

    [Fact(Timeout = 120_000)]
    public async Task Session_APostIsPointedAt_IsShownInAFormAndOnlyThenFiledAndRelayed()
    {
        var (worker, socket) = await JoinedWorker.JoinAsync(Limit);
        await using var _ = worker;
        Task<JsonNode> AskAsync(JsonObject interaction) => worker.AskAsync(socket, InGuild(Guilds[0], interaction), Limit);
        await AskAsync(worker.Make.Command("crew", Subcommand("setup", Option("water", 3, "Loon Basin"))));
        await AskAsync(worker.Make.Command("ice", Subcommand("follow", Option("water", 3, "Loon Basin"))));

        var joke = await AskAsync(worker.Make.MessageCommand("Relay ice post", "caught a 22 inch pike"));
        var form = await AskAsync(worker.Make.MessageCommand("Relay ice post", "4-5 inches of good ice off the landing, slush by the narrows"));
        Assert.DoesNotContain(worker.Server.Requests, request => request.Path.EndsWith("/messages", StringComparison.Ordinal));

        Assert.Contains("Nothing to pass on", joke.ToJsonString(), StringComparison.Ordinal);
        Assert.Equal(9, form["type"]!.GetValue<int>());
        var fields = form["data"]!["components"]!.AsArray().Select(label => label!["component"]!).ToList();
        Assert.Equal(["water", "found", "when"], fields.Select(field => field["custom_id"]!.GetValue<string>()));
        Assert.Equal("landing: 4in; narrows: slush", fields[1]["value"]!.GetValue<string>());
        Assert.Null(fields[2]["value"]);

        var answer = await AskAsync(worker.Make.Modal(
            form["data"]!["custom_id"]!.GetValue<string>(), ("water", "Loon Basin"), ("found", "landing: 4in; narrows: slush"), ("when", "")));

        Assert.Contains("2 reports", answer.ToJsonString(), StringComparison.Ordinal);
        var relay = await SentAsync(worker.Server, "POST", Guilds[0]);
        Assert.Contains("landing", relay, StringComparison.Ordinal);
        Assert.Contains("4-5 inches of good ice off the landing", relay, StringComparison.Ordinal);
        Assert.Contains("passed on by", relay, StringComparison.Ordinal);
    }

    // Waiting for an answer passes over what was sent meanwhile: all that came in is looked through first.
    private static async Task<string> SentAsync(StandInServer server, string method, ulong guild)
    {
        bool IsIt(RecordedRequest request) =>
            request.Method == method && request.Path.StartsWith($"channels/{StandInData.Id(guild + 1)}/messages", StringComparison.Ordinal);
        var sent = server.Requests.FirstOrDefault(IsIt);
        while (sent is null || !IsIt(sent))
        {
            sent = await server.NextRequestAsync("", Limit);
        }

        return sent.Json!.ToJsonString();
    }
}
