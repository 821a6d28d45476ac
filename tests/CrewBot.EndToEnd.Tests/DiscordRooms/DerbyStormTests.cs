using System.Diagnostics;
using System.Globalization;
using System.Text;
using System.Text.Json.Nodes;
using CrewBot.Discord.StandIn;
using static CrewBot.Discord.StandIn.InteractionMaker;

namespace CrewBot.EndToEnd.Tests.DiscordRooms;

/// <summary>
/// A derby of 200 anglers in the built program, who all enter at once, over a platform that fails every tenth answer and
/// delivers every seventh command twice. What comes out is compared with what was sent, counted here in another way.
/// </summary>
public sealed class DerbyStormTests : IDisposable
{
    private const int Anglers = 200;
    private const int FishEach = 4;
    private const int Best = 3;
    private const ulong Guild = 1100000000000000901;
    private const ulong FirstAngler = 1700000000000000000;
    private const string Name = "Basin day";

    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(10);

    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("crewbot-derby-");
    private GatewaySocket _socket = null!;
    private int _sent;

    private static CancellationToken Limit => TestContext.Current.CancellationToken;

    [Fact(Timeout = 240_000)]
    public async Task Derby_TwoHundredEnterAtOnceOverFaults_LosesNothingAndEndsAsCountedHere()
    {
        await using var server = await StandInServer.StartAsync();
        using var worker = Start(server);
        try
        {
            _socket = await server.NextActiveAsync(Limit);
            var create = Of(server, 0, "derby", "create", Option("name", 3, Name), Option("best", 4, Best), Option("ties", 3, "shared"));
            await SendAsync([create]);
            await server.NextAnswerAsync(create, Limit);
            server.Faults.Otherwise = Faults();
            await SendAsync(OfAnglers(angler => Of(server, angler, "derby", "join")));
            await ResultsAsync(server, (text, _) => text.Contains($"{Anglers} anglers,", StringComparison.Ordinal));
            for (var fish = 0; fish < FishEach; fish++)
            {
                await FishAsync(server, fish);
            }

            await SendAsync([Of(server, 0, "derby", "close")]);
            AssertResults((await ResultsAsync(server, (text, _) => text.Contains("closed", StringComparison.Ordinal))).Rows);
            await BoardAsync(server, board => board.StartsWith($"{Name}: closed", StringComparison.Ordinal));
            AssertBoard(server);
        }
        finally
        {
            worker.Kill(entireProcessTree: true);
            await worker.WaitForExitAsync(Limit);
        }
    }

    public void Dispose() => _folder.Delete(recursive: true);

    // In hundredths of an inch, the same at every run.
    private static int Measured(int angler, int fish) => 1000 + (((angler * 7919) + (fish * 104_729)) % 2000);

    private static bool IsSeen(int angler, int fish) => (angler + (3 * fish)) % 5 != 0;

    private static bool IsTakenBack(int angler, int fish) => (angler + fish) % 11 == 0;

    private static bool Counts(int angler, int fish) => IsSeen(angler, fish) && !IsTakenBack(angler, fish);

    // Quarters of an inch that a line of the board stands for, and the three greatest by striking out one after the other.
    private static int Total(int angler)
    {
        var quarters = Enumerable.Range(0, FishEach).Where(fish => Counts(angler, fish)).Select(fish => Measured(angler, fish) / 25).ToList();
        var total = 0;
        for (var place = 0; place < Best && quarters.Count > 0; place++)
        {
            total += quarters.Max();
            quarters.Remove(quarters.Max());
        }

        return total;
    }

    private static string Named(int angler) => string.Create(CultureInfo.InvariantCulture, $"Angler {angler}");

    private static string Inches(int hundredths) => string.Create(CultureInfo.InvariantCulture, $"{hundredths / 100m:0.##}");

    private static IReadOnlyList<JsonObject> OfAnglers(Func<int, JsonObject> make) => [.. Enumerable.Range(1, Anglers).Select(make)];

    // Everybody enters at once; whoever sits at the next hole has seen it, or nobody has; some think better of it.
    private async Task FishAsync(StandInServer server, int fish)
    {
        await SendAsync(OfAnglers(angler => Of(
            server, angler, "derby", "enter", Option("species", 3, "walleye"), Option("length", 3, $"{Inches(Measured(angler, fish))}in"))));
        var (_, rows) = await ResultsAsync(server, (_, rows) => rows.Count == Anglers * (fish + 1));
        var entries = rows.ToDictionary(row => (row[1], row[5]), row => int.Parse(row[3], CultureInfo.InvariantCulture));
        JsonObject OfEntry(int angler, int by, string verb) =>
            Of(server, by, "derby", verb, Option("entry", 4, entries[(Named(angler), $"{Inches(Measured(angler, fish))} in")]));
        await SendAsync(
        [
            .. Enumerable.Range(1, Anglers).Where(angler => IsSeen(angler, fish)).Select(angler => OfEntry(angler, (angler % Anglers) + 1, "saw")),
            .. Enumerable.Range(1, Anglers).Where(angler => IsTakenBack(angler, fish)).Select(angler => OfEntry(angler, angler, "leave")),
        ]);
        var counting = Enumerable.Range(0, fish + 1).Sum(one => Enumerable.Range(1, Anglers).Count(angler => Counts(angler, one)));
        var gone = Enumerable.Range(0, fish + 1).Sum(one => Enumerable.Range(1, Anglers).Count(angler => IsTakenBack(angler, one)));
        await ResultsAsync(server, (_, now) => now.Count(row => row[9] == "yes") == counting && now.Count(row => row[10] == "taken back") == gone);
    }

    private static void AssertResults(IReadOnlyList<string[]> rows)
    {
        Assert.Equal(Anglers * FishEach, rows.Count);
        var totals = Enumerable.Range(1, Anglers).ToDictionary(angler => angler, Total);
        for (var angler = 1; angler <= Anglers; angler++)
        {
            for (var fish = 0; fish < FishEach; fish++)
            {
                var row = Assert.Single(rows, row => row[1] == Named(angler) && row[5] == $"{Inches(Measured(angler, fish))} in");
                var better = totals.Values.Count(other => other > totals[angler]);
                Assert.Equal(Counts(angler, fish) ? "yes" : "no", row[9]);
                Assert.Equal(totals[angler] == 0 ? "" : (better + 1).ToString(CultureInfo.InvariantCulture), row[0]);
            }
        }
    }

    // One message, edited at most once in five seconds, that says in the end what was counted here.
    private static void AssertBoard(StandInServer server)
    {
        var edits = server.Requests.Where(request => request.Method == "PATCH" && IsBoard(request)).ToList();
        Assert.Single(edits.Select(edit => edit.Path).Distinct());
        Assert.All(edits.Zip(edits.Skip(1)), pair => Assert.True(Stopwatch.GetElapsedTime(pair.First.At, pair.Second.At) > TimeSpan.FromSeconds(4.9)));
        var first = Enumerable.Range(1, Anglers).MaxBy(Total);
        Assert.Contains(
            string.Create(CultureInfo.InvariantCulture, $"{Named(first)} {Total(first) / 4m:0.###} in"), TextOf(edits[^1])["description"]!.GetValue<string>(), StringComparison.Ordinal);
    }

    // Every tenth answer fails: refused for now, unavailable, or carried out with the answer lost.
    private static Func<string, string, CannedReply?> Faults()
    {
        var number = 0;
        return (method, path) => !path.EndsWith("/callback", StringComparison.Ordinal) && !(method == "POST" && path.EndsWith("/messages", StringComparison.Ordinal))
            ? null
            : Interlocked.Increment(ref number) switch
            {
                var at when at % 10 != 0 => null,
                var at when at % 40 == 0 => CannedReply.Limited(0.05),
                var at when at % 30 == 0 => new CannedReply(500) { CarriedOut = true },
                var at when at % 20 == 0 => CannedReply.WebPage(503),
                _ => new CannedReply(200) { Cut = true },
            };
    }

    // Sends all at once, every seventh twice; whether each is answered in time is not the matter here.
    private async Task SendAsync(IReadOnlyList<JsonObject> interactions)
    {
        foreach (var interaction in interactions)
        {
            await StandInServer.DispatchAsync(_socket, "INTERACTION_CREATE", interaction);
            if (++_sent % 7 == 0)
            {
                await StandInServer.DispatchAsync(_socket, "INTERACTION_CREATE", interaction);
            }
        }
    }

    // Asks for the results again and again until what was sent has come through.
    private async Task<(string Text, IReadOnlyList<string[]> Rows)> ResultsAsync(StandInServer server, Func<string, IReadOnlyList<string[]>, bool> isThere)
    {
        while (true)
        {
            var question = Of(server, 0, "derby", "results");
            await SendAsync([question]);
            using var patience = CancellationTokenSource.CreateLinkedTokenSource(Limit);
            patience.CancelAfter(Patience);
            try
            {
                RecordedRequest answer;
                do
                {
                    answer = await server.NextRequestAsync(question["token"]!.GetValue<string>(), patience.Token);
                }
                while (answer.Files.Count == 0);

                var (text, rows) = ($"{TitleOf(answer)} {TextOf(answer)["description"]}", Rows(answer.Files[0]));
                if (isThere(text, rows))
                {
                    return (text, rows);
                }
            }
            catch (OperationCanceledException) when (!Limit.IsCancellationRequested)
            {
                // Its answer was one of those that got lost.
            }
        }
    }

    private static async Task BoardAsync(StandInServer server, Func<string, bool> says)
    {
        while (!server.Requests.Any(request => request.Method == "PATCH" && IsBoard(request) && says(TitleOf(request))))
        {
            await server.NextRequestAsync("/messages/", Limit);
        }
    }

    private static bool IsBoard(RecordedRequest request) =>
        request.Path.StartsWith($"channels/{StandInData.Id(Guild + 1)}/messages/", StringComparison.Ordinal) && TitleOf(request).StartsWith($"{Name}: ", StringComparison.Ordinal);

    private static List<string[]> Rows(RecordedFile csv) =>
    [
        .. Encoding.UTF8.GetString(csv.Content).TrimStart('\uFEFF').Split('\n', StringSplitOptions.RemoveEmptyEntries).Skip(1)
            .Select(line => line.TrimEnd('\r').Split(',')),
    ];

    private static string TitleOf(RecordedRequest answer) => TextOf(answer)["title"]!.GetValue<string>();

    private static JsonNode TextOf(RecordedRequest answer) => Message(answer)["embeds"]![0]!;

    private static JsonNode Message(RecordedRequest answer) => answer.Json!["data"] ?? answer.Json;

    private static JsonObject Of(StandInServer server, int angler, string family, string verb, params JsonObject[] options) =>
        By(angler, server.Interactions.Command(family, Subcommand(verb, options)));

    // Number 0 manages the server; the others are anglers.
    private static JsonObject By(int angler, JsonObject interaction)
    {
        var (crew, channel) = (StandInData.Id(Guild), StandInData.Id(Guild + 1));
        interaction["guild_id"] = crew;
        interaction["guild"]!["id"] = crew;
        interaction["channel_id"] = channel;
        interaction["channel"]!["id"] = channel;
        interaction["channel"]!["guild_id"] = crew;
        var member = angler == 0 ? StandInData.Member("32") : StandInData.Member();
        member["user"]!["id"] = StandInData.Id(FirstAngler + (ulong)angler);
        member["nick"] = Named(angler);
        interaction["member"] = member;
        return interaction;
    }

    private Process Start(StandInServer server)
    {
        var worker = Worker.Start(new WorkerCall
        {
            Environment = new Dictionary<string, string>
            {
                ["CREWBOT_DATABASE"] = Path.Combine(_folder.FullName, "crew.db"),
                ["CREWBOT_DISCORD__TOKEN"] = server.Settings.Token,
                ["CREWBOT_DISCORD__APIBASEADDRESS"] = server.ApiAddress.ToString(),
            },
        });
        worker.StandardInput.Close(); // as a service has it
        worker.OutputDataReceived += static (_, _) => { };
        worker.ErrorDataReceived += static (_, _) => { };
        worker.BeginOutputReadLine();
        worker.BeginErrorReadLine();
        return worker;
    }
}
