using System.Text.Json.Nodes;

namespace CrewBot.Discord.StandIn;

/// <summary>Makes the events that people's clicks and commands cause, in the shape that the platform sends.</summary>
public sealed class InteractionMaker(ulong applicationId)
{
    private const string FileId = "1500000000000000001";

    private long _number;

    /// <summary>A slash command; options are given as the platform nests them.</summary>
    public JsonObject Command(string name, params JsonObject[] options) =>
        Envelope(2, new JsonObject
        {
            ["id"] = "1200000000000000001",
            ["name"] = name,
            ["type"] = 1,
            ["options"] = new JsonArray([.. options]),
        });

    public JsonObject Autocomplete(string name, params JsonObject[] options) =>
        Envelope(4, new JsonObject
        {
            ["id"] = "1200000000000000001",
            ["name"] = name,
            ["type"] = 1,
            ["options"] = new JsonArray([.. options]),
        });

    public JsonObject Button(string customId) =>
        OnMessage(3, new JsonObject { ["custom_id"] = customId, ["component_type"] = 2 });

    public JsonObject Select(string customId, params string[] values) =>
        OnMessage(3, new JsonObject
        {
            ["custom_id"] = customId,
            ["component_type"] = 3,
            ["values"] = new JsonArray([.. values.Select(value => JsonValue.Create(value))]),
        });

    /// <summary>A submitted form: each field as a label around a text input.</summary>
    public JsonObject Modal(string customId, params (string Id, string Value)[] fields) =>
        Envelope(5, new JsonObject
        {
            ["custom_id"] = customId,
            ["components"] = new JsonArray([.. fields.Select(field => new JsonObject
            {
                ["type"] = 18,
                ["id"] = 1,
                ["component"] = new JsonObject
                {
                    ["type"] = 4, ["id"] = 2, ["custom_id"] = field.Id, ["value"] = field.Value,
                },
            })]),
        });

    /// <summary>A command from the menu of a message, which may hold a photo.</summary>
    public JsonObject MessageCommand(string name, string content, string? photo = null, ulong author = StandInData.PersonId)
    {
        var message = StandInData.Message(1300000000000000001, StandInData.ChannelId, author, null);
        message["author"] = StandInData.Person(author);
        message["content"] = content;
        message["attachments"] = photo is null ? new JsonArray() : new JsonArray(File(photo));
        return Envelope(2, new JsonObject
        {
            ["id"] = "1200000000000000002",
            ["name"] = name,
            ["type"] = 3,
            ["target_id"] = "1300000000000000001",
            ["resolved"] = new JsonObject { ["messages"] = new JsonObject { ["1300000000000000001"] = message } },
        });
    }

    /// <summary>A message that a person writes to the bot alone.</summary>
    public JsonObject DirectMessage(string content, string? photo = null)
    {
        var serial = (ulong)Interlocked.Increment(ref _number);
        var message = StandInData.Message(1400000000000000000 + serial, StandInData.PersonId ^ 1, StandInData.PersonId, null);
        message["author"] = StandInData.Person();
        message["content"] = content;
        message["attachments"] = photo is null ? new JsonArray() : new JsonArray(File(photo));
        return message;
    }

    public JsonObject UserCommand(string name, ulong target) =>
        Envelope(2, new JsonObject
        {
            ["id"] = "1200000000000000003",
            ["name"] = name,
            ["type"] = 2,
            ["target_id"] = StandInData.Id(target),
            ["resolved"] = new JsonObject
            {
                ["users"] = new JsonObject { [StandInData.Id(target)] = StandInData.Person(target, "bo") },
            },
        });

    /// <summary>Adds the file that an option of a command stands for.</summary>
    public static JsonObject WithFile(JsonObject command, string address)
    {
        command["data"]!["resolved"] = new JsonObject { ["attachments"] = new JsonObject { [FileId] = File(address) } };
        return command;
    }

    public static JsonObject Subcommand(string name, params JsonObject[] options) => new()
    {
        ["name"] = name,
        ["type"] = 1,
        ["options"] = new JsonArray([.. options]),
    };

    public static JsonObject Option(string name, int type, JsonNode value, bool focused = false)
    {
        var option = new JsonObject { ["name"] = name, ["type"] = type, ["value"] = value };
        if (focused)
        {
            option["focused"] = true;
        }

        return option;
    }

    /// <summary>Turns an interaction made in a guild into one made in a direct message with the bot.</summary>
    public static JsonObject InDirectMessage(JsonObject interaction)
    {
        interaction.Remove("guild_id");
        interaction.Remove("guild_locale");
        interaction.Remove("member");
        interaction["user"] = StandInData.Person();
        interaction["context"] = 1;
        return interaction;
    }

    private static JsonObject File(string address) => new()
    {
        ["id"] = FileId,
        ["filename"] = "catch.jpg",
        ["content_type"] = "image/jpeg",
        ["size"] = 204800,
        ["url"] = address,
        ["proxy_url"] = address,
    };

    private JsonObject OnMessage(int type, JsonObject data)
    {
        var interaction = Envelope(type, data);
        interaction["message"] = StandInData.Message(
            1300000000000000001, StandInData.ChannelId, applicationId, written: null);
        return interaction;
    }

    private JsonObject Envelope(int type, JsonObject data)
    {
        var serial = (ulong)Interlocked.Increment(ref _number);
        var id = StandInData.Id(1400000000000000000 + serial);
        return new JsonObject
        {
            ["id"] = id,
            ["application_id"] = StandInData.Id(applicationId),
            ["type"] = type,
            ["data"] = data,
            ["guild_id"] = StandInData.Id(StandInData.GuildId),
            ["guild"] = new JsonObject
            {
                ["id"] = StandInData.Id(StandInData.GuildId),
                ["locale"] = "en-US",
                ["features"] = new JsonArray(),
            },
            ["channel_id"] = StandInData.Id(StandInData.ChannelId),
            ["channel"] = new JsonObject
            {
                ["id"] = StandInData.Id(StandInData.ChannelId),
                ["type"] = 0,
                ["name"] = "tamarack-bay",
                ["guild_id"] = StandInData.Id(StandInData.GuildId),
            },
            ["member"] = StandInData.Member(),
            ["token"] = $"interaction-marker-token-{id}",
            ["version"] = 1,
            ["app_permissions"] = "2252109051448320",
            ["locale"] = "en-US",
            ["guild_locale"] = "en-US",
            ["entitlements"] = new JsonArray(),
            ["authorizing_integration_owners"] = new JsonObject { ["0"] = StandInData.Id(StandInData.GuildId) },
            ["context"] = 0,
            ["attachment_size_limit"] = 10485760,
        };
    }
}
