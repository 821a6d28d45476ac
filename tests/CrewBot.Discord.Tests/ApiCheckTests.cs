using CrewBot.Discord.StandIn;
using CrewBot.Discord.Tests.Fakes;

namespace CrewBot.Discord.Tests;

/// <summary>What <c>selfcheck</c> says of the token, the API and the clock, with each of them wrong.</summary>
public sealed class ApiCheckTests
{
    private static CancellationToken Limit => TestContext.Current.CancellationToken;

    [Fact(Timeout = 30_000)]
    public async Task RunAsync_AllIsWell_SaysOkOfEach()
    {
        await using var server = await StandInServer.StartAsync();
        var findings = await new ApiCheck(OptionsOf(server), TimeProvider.System).RunAsync(Limit);

        Assert.All(findings, finding => Assert.True(finding.IsWell, finding.Text));
        Assert.Equal(["bot token", $"API at {server.ApiAddress}", "session starts", "clock"], findings.Select(finding => finding.Subject));
        Assert.Equal("ok, 1000 of 1000 left today", findings[2].Text);
    }

    [Theory(Timeout = 30_000)]
    [InlineData(401, "refuses the bot token; reset it")]
    [InlineData(400, "refuses the bot token; reset it")]
    [InlineData(503, "answers 503; try again later")]
    [InlineData(404, "answers 404; try again later, and check the key ApiBaseAddress")]
    public async Task RunAsync_ApiRefuses_SaysWhatToDo(int status, string remedy)
    {
        await using var server = await StandInServer.StartAsync();
        server.Faults.Next("gateway/bot", CannedReply.WebPage(status));

        Assert.Contains(remedy, await FaultAsync(server), StringComparison.Ordinal);
    }

    [Fact(Timeout = 30_000)]
    public async Task RunAsync_AddressOfSomethingElse_SaysSo()
    {
        await using var server = await StandInServer.StartAsync();
        server.Faults.Next("gateway/bot", CannedReply.WebPage(200));

        Assert.Contains("answers, but not as an API of this kind; check the key ApiBaseAddress", await FaultAsync(server), StringComparison.Ordinal);
    }

    [Theory(Timeout = 30_000)]
    [InlineData("http://127.0.0.1:1/api/v10/", "could not be reached")]
    [InlineData("http://no-such-host.invalid/api/v10/", "name could not be resolved")]
    public async Task RunAsync_AddressThatIsNotReached_SaysWhatToCheck(string address, string fault)
    {
        var options = new DiscordOptions { Token = new BotToken("a.b.c"), ApiBaseAddress = new Uri(address) };
        var finding = (await new ApiCheck(options, TimeProvider.System).RunAsync(Limit)).Single(finding => !finding.IsWell);

        Assert.Contains(fault, finding.Text, StringComparison.Ordinal);
        Assert.Contains("check the network, the name server and the key ApiBaseAddress", finding.Text, StringComparison.Ordinal);
    }

    [Fact(Timeout = 30_000)]
    public async Task RunAsync_ServerThatNeverAnswers_IsGivenUpAfterTenSeconds()
    {
        await using var server = await StandInServer.StartAsync();
        server.Faults.Next("gateway/bot", new CannedReply(200) { Silent = true });

        Assert.Contains("no answer within 10 s", await FaultAsync(server, new HurriedClock(factor: 20)), StringComparison.Ordinal);
    }

    [Theory(Timeout = 30_000)]
    [InlineData(3600, "3600 s ahead of the server's; let the system set its time from the network")]
    [InlineData(-3600, "3600 s behind the server's; let the system set its time from the network")]
    public async Task RunAsync_ClockIsWrong_SaysByHowMuch(int seconds, string text)
    {
        await using var server = await StandInServer.StartAsync();
        var said = await FaultAsync(server, new SkewedClock(TimeSpan.FromSeconds(seconds)));

        // The Date header has whole seconds, so the difference may read as one more or less.
        Assert.Contains(text[4..], said, StringComparison.Ordinal);
        Assert.InRange(int.Parse(said.Split(' ')[0], System.Globalization.CultureInfo.InvariantCulture), 3590, 3610);
    }

    [Fact(Timeout = 30_000)]
    public async Task RunAsync_NoStartsLeft_SaysWhatToFindOut()
    {
        await using var server = await StandInServer.StartAsync(new StandInSettings { StartsLeft = 0 });

        Assert.Contains("none left today", await FaultAsync(server), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("MTAxMjM0.Gabcde.abc-DEF_123", true)]
    [InlineData("MTAxMjM0.Gabcde", false)]
    [InlineData("Bot MTAxMjM0.Gabcde.abc", false)]
    [InlineData("your token here", false)]
    public void Token_OfAnyShape_IsKnownForIncompleteOrWhole(string token, bool isWhole) => Assert.Equal(isWhole, new BotToken(token).HasUsualShape);

    private static DiscordOptions OptionsOf(StandInServer server) => new() { Token = new BotToken(server.Settings.Token), ApiBaseAddress = server.ApiAddress };

    private static async Task<string> FaultAsync(StandInServer server, TimeProvider? clock = null)
    {
        var findings = await new ApiCheck(OptionsOf(server), clock ?? TimeProvider.System).RunAsync(Limit);
        Assert.DoesNotContain(findings, finding => finding.Text.Contains(server.Settings.Token, StringComparison.Ordinal));
        return findings.Single(finding => !finding.IsWell).Text;
    }

    private sealed class SkewedClock(TimeSpan by) : TimeProvider
    {
        public override DateTimeOffset GetUtcNow() => base.GetUtcNow() + by;
    }
}
