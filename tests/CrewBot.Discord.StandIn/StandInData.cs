using System.Globalization;
using System.Text.Json.Nodes;

namespace CrewBot.Discord.StandIn;

/// <summary>The invented people, places and messages that the stand-in speaks of.</summary>
public static class StandInData
{
    public const ulong GuildId = 1100000000000000001;
    public const ulong ChannelId = 1100000000000000002;
    public const ulong PersonId = 1100000000000000003;

    public static string Id(ulong value) => value.ToString(CultureInfo.InvariantCulture);

    public static JsonObject BotUser(ulong id) => new()
    {
        ["id"] = Id(id),
        ["username"] = "crewbot",
        ["discriminator"] = "0000",
        ["global_name"] = null,
        ["avatar"] = null,
        ["bot"] = true,
        ["flags"] = 0,
        ["public_flags"] = 0,
        ["mfa_enabled"] = false,
        ["verified"] = true,
        ["locale"] = "en-US",
        ["email"] = null,
    };

    public static JsonObject Person(ulong id = PersonId, string name = "ada") => new()
    {
        ["id"] = Id(id),
        ["username"] = name,
        ["discriminator"] = "0",
        ["global_name"] = "Ada of Loon Basin",
        ["avatar"] = null,
        ["bot"] = false,
        ["public_flags"] = 0,
    };

    /// <summary>A server as its own address gives it, cut to what is always there.</summary>
    public static JsonObject Guild(string id, string name) => new()
    {
        ["id"] = id,
        ["name"] = name,
        ["icon"] = null,
        ["owner_id"] = Id(PersonId),
        ["preferred_locale"] = "en-US",
        ["features"] = new JsonArray(),
        ["roles"] = new JsonArray(),
    };

    /// <summary>A member as an interaction carries it.</summary>
    public static JsonObject Member(string permissions = "2147483648") => new()
    {
        ["user"] = Person(),
        ["nick"] = null,
        ["avatar"] = null,
        ["roles"] = new JsonArray(),
        ["joined_at"] = "2026-11-01T08:00:00.000000+00:00",
        ["deaf"] = false,
        ["mute"] = false,
        ["flags"] = 0,
        ["pending"] = false,
        ["permissions"] = permissions,
        ["premium_since"] = null,
    };

    /// <summary>A message as read back from the API.</summary>
    public static JsonObject Message(ulong id, ulong channel, ulong author, JsonNode? written) => new()
    {
        ["id"] = Id(id),
        ["channel_id"] = Id(channel),
        ["type"] = 0,
        ["author"] = BotUser(author),
        ["content"] = written?["content"]?.DeepClone() ?? "",
        ["timestamp"] = "2026-11-25T07:00:00.000000+00:00",
        ["edited_timestamp"] = null,
        ["tts"] = false,
        ["mention_everyone"] = false,
        ["mentions"] = new JsonArray(),
        ["mention_roles"] = new JsonArray(),
        ["attachments"] = new JsonArray(),
        ["embeds"] = written?["embeds"]?.DeepClone() ?? new JsonArray(),
        ["components"] = written?["components"]?.DeepClone() ?? new JsonArray(),
        ["pinned"] = false,
        ["flags"] = written?["flags"]?.DeepClone() ?? 0,
    };
}
