using System.Net;
using CrewBot.Discord.Wire;

namespace CrewBot.Discord.Rest;

/// <summary>The calls that the bot makes, and no others.</summary>
internal static class Routes
{
    private const int AlreadyAcknowledged = 40060;

    public static readonly Route GatewayAdvice = Read("gateway/bot", "gateway/bot");
    public static readonly Route CurrentApplication = Read("applications/@me", "applications/@me");

    public static Route Guild(Snowflake guild) =>
        new(HttpMethod.Get, "guilds/{guild}", $"guilds/{guild}") { Major = guild.ToString(), Repetition = Repetition.Always };

    public static Route GuildMember(Snowflake guild, Snowflake person) =>
        new(HttpMethod.Get, "guilds/{guild}/members/{id}", $"guilds/{guild}/members/{person}")
        {
            Major = guild.ToString(),
            Repetition = Repetition.Always,
        };

    /// <summary>There is one direct channel with each person: opening it again finds it.</summary>
    public static readonly Route DirectChannel =
        new(HttpMethod.Post, "users/@me/channels", "users/@me/channels") { Repetition = Repetition.Always };

    /// <summary>A repeated first answer is refused by its own code, which then means that the first one arrived.</summary>
    public static Route Callback(Snowflake interaction, string token) =>
        new(HttpMethod.Post, "interactions/{id}/{token}/callback", $"interactions/{interaction}/{Escape(token)}/callback")
        {
            ByInteractionToken = true,
            Unbucketed = true,
            Repetition = Repetition.Always,
            ProvesDone = static (_, code) => code == AlreadyAcknowledged,
        };

    public static Route EditOriginal(Snowflake application, string token) =>
        Webhook(HttpMethod.Patch, application, token, "/messages/@original", Repetition.Always);

    public static Route FollowUp(Snowflake application, string token) =>
        Webhook(HttpMethod.Post, application, token, "", Repetition.OnlyIfNotRun);

    /// <summary>Every created message carries an enforced nonce, so repeating the call makes no second one.</summary>
    public static Route CreateMessage(Snowflake channel) =>
        InChannel(HttpMethod.Post, channel, "/messages", "/messages");

    public static Route EditMessage(Snowflake channel, Snowflake message) =>
        InChannel(HttpMethod.Patch, channel, "/messages/{id}", $"/messages/{message}");

    public static Route DeleteMessage(Snowflake channel, Snowflake message) =>
        InChannel(HttpMethod.Delete, channel, "/messages/{id}", $"/messages/{message}") with
        {
            ProvesDone = static (status, _) => status == HttpStatusCode.NotFound,
        };

    /// <summary>A message carries at most one thread: a repeated call is refused rather than carried out twice.</summary>
    public static Route ThreadUnderMessage(Snowflake channel, Snowflake message) =>
        InChannel(HttpMethod.Post, channel, "/messages/{id}/threads", $"/messages/{message}/threads");

    public static Route ThreadInChannel(Snowflake channel) =>
        InChannel(HttpMethod.Post, channel, "/threads", "/threads") with { Repetition = Repetition.OnlyIfNotRun };

    public static Route ListCommands(Snowflake application, Snowflake? guild) =>
        Commands(HttpMethod.Get, application, guild, "?with_localizations=true");

    public static Route OverwriteCommands(Snowflake application, Snowflake? guild) =>
        Commands(HttpMethod.Put, application, guild, "");

    private static Route Read(string template, string path) =>
        new(HttpMethod.Get, template, path) { Repetition = Repetition.Always };

    private static Route InChannel(HttpMethod method, Snowflake channel, string template, string path) =>
        new(method, "channels/{channel}" + template, $"channels/{channel}{path}")
        {
            Major = channel.ToString(),
            Repetition = Repetition.Always,
        };

    private static Route Webhook(
        HttpMethod method, Snowflake application, string token, string rest, Repetition repetition) =>
        new(method, "webhooks/{application}/{token}" + rest, $"webhooks/{application}/{Escape(token)}{rest}")
        {
            Major = token,
            ByInteractionToken = true,
            Repetition = repetition,
        };

    private static Route Commands(HttpMethod method, Snowflake application, Snowflake? guild, string query) =>
        guild is null
            ? new Route(method, "applications/{id}/commands", $"applications/{application}/commands{query}")
            {
                Repetition = Repetition.Always,
            }
            : new Route(
                method,
                "applications/{id}/guilds/{guild}/commands",
                $"applications/{application}/guilds/{guild}/commands{query}")
            {
                Major = guild.Value.ToString(),
                Repetition = Repetition.Always,
            };

    private static string Escape(string token) => Uri.EscapeDataString(token);
}
