using System.Globalization;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using CrewBot.Discord.StandIn;
using static CrewBot.Discord.StandIn.InteractionMaker;

namespace CrewBot.EndToEnd.Tests.DiscordRooms;

/// <summary>Ice reports on their way to three crews' channels while the platform or the program fails.</summary>
public sealed partial class RelayFaultTests : IDisposable
{
    private const int Reports = 3;
    private const string Reason = "read the tape wrong";

    private static readonly ulong[] Guilds = [1100000000000000001, 1100000000000000101, 1100000000000000201];

    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("crewbot-relay-");

    private static CancellationToken Limit => TestContext.Current.CancellationToken;

    private string DatabaseFile => Path.Combine(_folder.FullName, "crew.db");

    [Theory(Timeout = 180_000)]
    [InlineData("none")]
    [InlineData("too many requests")]
    [InlineData("server errors")]
    [InlineData("carried out, answer lost")]
    [InlineData("outage")]
    [InlineData("restart")]
    public async Task Relay_WhateverFails_EachChannelSeesEachReportOnceInOrderAndEveryCorrection(string fault)
    {
        await using var server = await StandInServer.StartAsync();
        var worker = await JoinedWorker.JoinAsync(server, DatabaseFile, Limit);
        try
        {
            await AgreeAsync(worker);
            Plan(server, fault);

            for (var report = 1; report <= Reports; report++)
            {
                await AskAsync(worker, Guilds[0], "report", Option("water", 3, "Loon Basin"), Option("spot", 3, "north bay"), Option("clear", 3, $"{report + 4}in"));
            }

            if (fault == "restart")
            {
                await UntilAsync(server, () => Guilds.Any(guild => NumbersIn(server, guild).Any()));
                await worker.Worker.DisposeAsync(); // killed with posts on their way
                server.Faults.Clear();
                worker = await JoinedWorker.JoinAsync(server, DatabaseFile, Limit);
            }

            await UntilAsync(server, () => Guilds.All(guild => NumbersIn(server, guild).Distinct().Count() == Reports));
            await AskAsync(worker, Guilds[0], "correct", Option("report", 4, 2), Option("reason", 3, Reason), Option("clear", 3, "4in"));
            await UntilAsync(server, () => Guilds.All(guild => SentTo(server, guild).Any(text => text.Contains(Reason, StringComparison.Ordinal))));
            await AskAsync(worker, Guilds[0], "board", Option("water", 3, "Loon Basin"));

            // However often one is sent, the platform shows a nonce once.
            Assert.All(Guilds, guild => Assert.Equal(Reports, SentTo(server, guild, "POST").Select(text => JsonNode.Parse(text)!["nonce"]!.ToString()).Distinct().Count()));
            Assert.All(Guilds, guild => Assert.Equal([1, 2, 3], OnceEach(NumbersIn(server, guild))));
        }
        finally
        {
            await worker.Worker.DisposeAsync();
        }
    }

    public void Dispose() => _folder.Delete(recursive: true);

    private static void Plan(StandInServer server, string fault)
    {
        switch (fault)
        {
            case "too many requests":
                server.Faults.Next("channels/", CannedReply.Limited(0.3), times: 4);
                break;
            case "server errors":
                server.Faults.Next("channels/", CannedReply.WebPage(503), times: 3);
                break;
            case "carried out, answer lost":
                server.Faults.Next("channels/", new CannedReply(200) { CarriedOut = true, Cut = true }, times: 3);
                break;
            case "outage":
                server.Faults.Next("channels/", new CannedReply(200) { Cut = true }, times: 6);
                break;
            case "restart":
                server.Faults.Next("channels/", new CannedReply(200) { Silent = true }, times: 9);
                break;
        }
    }

    private static async Task AgreeAsync((JoinedWorker Worker, GatewaySocket Socket) worker)
    {
        foreach (var guild in Guilds)
        {
            await worker.Worker.AskAsync(worker.Socket, InGuild(guild, worker.Worker.Make.Command("crew", Subcommand("setup", Option("water", 3, "Loon Basin")))), Limit);
            await AskAsync(worker, guild, "follow", Option("water", 3, "Loon Basin"));
        }

        foreach (var partner in Guilds[1..])
        {
            await AskAsync(worker, Guilds[0], "share", Option("crew", 3, StandInData.Id(partner)));
            await AskAsync(worker, partner, "share", Option("crew", 3, StandInData.Id(Guilds[0])));
        }
    }

    private static Task<JsonNode> AskAsync((JoinedWorker Worker, GatewaySocket Socket) worker, ulong guild, string verb, params JsonObject[] options) =>
        worker.Worker.AskAsync(worker.Socket, InGuild(guild, worker.Worker.Make.Command("ice", Subcommand(verb, options))), Limit);

    private static async Task UntilAsync(StandInServer server, Func<bool> isSo)
    {
        while (!isSo())
        {
            await server.NextRequestAsync("", Limit);
        }
    }

    // A request that failed is sent again before the next one: what stands behind one another is one report.
    private static List<int> OnceEach(IEnumerable<int> numbers) => numbers.Aggregate(
        new List<int>(),
        (once, number) => once.Count > 0 && once[^1] == number ? once : [.. once, number]);

    private static IEnumerable<string> SentTo(StandInServer server, ulong guild, string? method = null) => server.Requests
        .Where(request => (method is null || request.Method == method) && request.Path.StartsWith($"channels/{StandInData.Id(guild + 1)}/messages", StringComparison.Ordinal))
        .Select(request => request.Json!.ToJsonString());

    private static IEnumerable<int> NumbersIn(StandInServer server, ulong guild) => SentTo(server, guild, "POST")
        .Select(text => ReportNumber().Match(text))
        .Where(match => match.Success)
        .Select(match => int.Parse(match.Groups["number"].Value, CultureInfo.InvariantCulture));

    [GeneratedRegex(@"Report #(?<number>[0-9]+)", RegexOptions.ExplicitCapture)]
    private static partial Regex ReportNumber();
}
