using System.Globalization;
using System.Net;
using CrewBot.Discord.Rest;
using CrewBot.Discord.Wire;

namespace CrewBot.Discord;

/// <summary>Asks the API one question, once, and says what the answer shows.</summary>
public sealed class ApiCheck(DiscordOptions options, TimeProvider clock)
{
    private const string OfficialHost = "discord.com";
    private static readonly TimeSpan AnswerWithin = TimeSpan.FromSeconds(10);
    private static readonly TimeSpan SkewThatMatters = TimeSpan.FromSeconds(5);

    /// <summary>Checks the token's shape, whether the API is reached, whether it takes the token, and the clock.</summary>
    public async Task<IReadOnlyList<Finding>> RunAsync(CancellationToken cancellationToken)
    {
        var findings = new List<Finding> { Shape() };
        using var http = ApiConnection.Create();
        using var timeout = new CancellationTokenSource(AnswerWithin, clock);
        using var either = CancellationTokenSource.CreateLinkedTokenSource(cancellationToken, timeout.Token);
        using var request = new HttpRequestMessage(
            HttpMethod.Get, new Uri(options.ApiBaseAddress, Routes.GatewayAdvice.Path));
        request.Headers.Authorization = new("Bot", options.Token.Value);
        try
        {
            using var response = await http.SendAsync(request, either.Token);
            var body = await response.Content.ReadAsByteArrayAsync(either.Token);
            findings.AddRange(Judge(response, body));
        }
        catch (HttpRequestException fault)
        {
            findings.Add(Reach(false, $"{Faults.Describe(fault)}; check the network, the name server and the key ApiBaseAddress"));
        }
        catch (OperationCanceledException) when (timeout.IsCancellationRequested)
        {
            findings.Add(Reach(false, "no answer within 10 s; check the network and any proxy or firewall"));
        }

        return findings;
    }

    private Finding Shape() =>
        options.Token.HasUsualShape || options.ApiBaseAddress.Host != OfficialHost
            ? new Finding("bot token", true, "ok, by its shape")
            : new Finding("bot token", false, "not of the usual shape, three parts with dots between; copy the whole token again");

    private IEnumerable<Finding> Judge(HttpResponseMessage response, byte[] body)
    {
        var advice = ResponseReader.TryRead(response, body, WireJson.Default.GatewayAdvice);
        yield return response.StatusCode switch
        {
            HttpStatusCode.OK when advice?.Url is not null => Reach(true, "ok"),
            HttpStatusCode.OK => Reach(false, "answers, but not as an API of this kind; check the key ApiBaseAddress"),
            HttpStatusCode.Unauthorized or HttpStatusCode.BadRequest =>
                Reach(false, "refuses the bot token; reset it in the developer portal and configure the new one"),
            var status => Reach(false, $"answers {(int)status}; try again later, and check the key ApiBaseAddress"),
        };
        if (advice?.SessionStartLimit is { Remaining: { } left, Total: { } total })
        {
            yield return left > 0
                ? new Finding("session starts", true, string.Create(CultureInfo.InvariantCulture, $"ok, {left} of {total} left today"))
                : new Finding("session starts", false, "none left today; CrewBot waits by itself, find out what restarts it so often");
        }

        if (response.Headers.Date is { } serverTime)
        {
            yield return Clock(clock.GetUtcNow() - serverTime);
        }
    }

    private static Finding Clock(TimeSpan ahead) =>
        ahead.Duration() <= SkewThatMatters
            ? new Finding("clock", true, "ok")
            : new Finding("clock", false, string.Create(
                CultureInfo.InvariantCulture,
                $"{ahead.Duration().TotalSeconds:0} s {(ahead > TimeSpan.Zero ? "ahead of" : "behind")} the server's; let the system set its time from the network"));

    private Finding Reach(bool isWell, string text) => new($"API at {options.ApiBaseAddress}", isWell, text);
}
