using System.Net.Http.Headers;
using System.Reflection;

namespace CrewBot.Discord.Rest;

/// <summary>
/// Makes the one long-lived connection pool to the API. No client factory: its logging prints addresses, and the
/// addresses of interactions carry their tokens.
/// </summary>
internal static class ApiConnection
{
    private const long LongestAnswer = 16 * 1024 * 1024;
    private static readonly TimeSpan FollowNameChangesEvery = TimeSpan.FromMinutes(5);
    private static readonly TimeSpan ConnectWithin = TimeSpan.FromSeconds(5);

    /// <summary>What every request and the gateway's upgrade call themselves; an unnamed client is turned away.</summary>
    public static string UserAgent { get; } =
        $"DiscordBot (https://crewbot.invalid, {Assembly.GetExecutingAssembly().GetName().Version?.ToString(3)})";

    public static HttpClient Create()
    {
        var http = new HttpClient(new SocketsHttpHandler
        {
            AllowAutoRedirect = false,
            UseCookies = false,
            PooledConnectionLifetime = FollowNameChangesEvery,
            ConnectTimeout = ConnectWithin,
            ActivityHeadersPropagator = null,
        })
        {
            Timeout = Timeout.InfiniteTimeSpan, // each attempt brings its own
            MaxResponseContentBufferSize = LongestAnswer,
            DefaultVersionPolicy = HttpVersionPolicy.RequestVersionOrHigher,
        };
        http.DefaultRequestHeaders.UserAgent.ParseAdd(UserAgent);
        http.DefaultRequestHeaders.Accept.Add(new MediaTypeWithQualityHeaderValue("application/json"));
        return http;
    }
}
