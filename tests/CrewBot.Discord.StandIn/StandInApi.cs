using System.Collections.Concurrent;
using System.Globalization;
using System.Text.Json.Nodes;

namespace CrewBot.Discord.StandIn;

/// <summary>What the API does when nothing goes wrong: keeps commands, messages and first answers.</summary>
internal sealed class StandInApi(StandInSettings settings)
{
    private readonly ConcurrentDictionary<string, JsonArray> _commands = new();
    private readonly ConcurrentDictionary<string, bool> _answered = new();
    private readonly ConcurrentDictionary<string, string> _nonces = new();
    private long _serial = 1500000000000000000;
    private int _created;

    /// <summary>Interactions that have got their first answer.</summary>
    public ICollection<string> Answered => _answered.Keys;

    public string GatewayAddress { get; set; } = "";

    /// <summary>Messages that came to be; one repeated under its nonce counts once.</summary>
    public int MessagesCreated => _created;

    public (int Status, JsonNode? Body) Answer(RecordedRequest request)
    {
        var path = request.Path.Split('?')[0];
        var parts = path.Split('/');
        return (request.Method, parts) switch
        {
            ("GET", ["gateway", "bot"]) => (200, Advice()),
            ("GET", ["applications", "@me"]) or ("GET", ["oauth2", "applications", "@me"]) => (200, ApplicationBody()),
            ("GET", ["users", "@me"]) => (200, StandInData.BotUser(settings.ApplicationId)),
            ("GET", ["applications", _, .., "commands"]) => (200, _commands.GetValueOrDefault(path, []).DeepClone()),
            ("GET", ["guilds", var guild]) => (200, StandInData.Guild(guild, settings.GuildNames.GetValueOrDefault(guild, $"Crew {guild}"))),
            ("GET", ["guilds", _, "members", _]) => (200, StandInData.Member()),
            ("PUT", ["applications", _, .., "commands"]) => (200, Register(path, request.Json!.AsArray())),
            ("POST", ["interactions", var id, _, "callback"]) => FirstAnswer(id),
            ("POST", ["webhooks", _, _]) => (200, Create(StandInData.ChannelId, request.Json)),
            ("PATCH", ["webhooks", _, _, "messages", _]) => (200, Create(StandInData.ChannelId, request.Json)),
            ("POST", ["channels", var channel, "messages"]) => (200, Create(Number(channel), request.Json)),
            ("PATCH", ["channels", var channel, "messages", var id]) =>
                (200, StandInData.Message(Number(id), Number(channel), settings.ApplicationId, request.Json)),
            ("POST", ["channels", _, "messages", var id, "threads"]) => (201, Thread(id, request.Json)),
            ("POST", ["users", "@me", "channels"]) => (200, DirectChannel(request.Json)),
            ("POST", ["channels", _, "threads"]) => (201, Thread(NextId(), request.Json)),
            ("DELETE", _) => (204, null),
            _ => (404, new JsonObject { ["message"] = "404: Not Found", ["code"] = 0 }),
        };
    }

    private static ulong Number(string id) => ulong.Parse(id, CultureInfo.InvariantCulture);

    private string NextId() => StandInData.Id((ulong)Interlocked.Increment(ref _serial));

    private JsonObject Advice() => new()
    {
        ["url"] = GatewayAddress,
        ["shards"] = settings.AdvisedShards,
        ["session_start_limit"] = new JsonObject
        {
            ["total"] = 1000,
            ["remaining"] = settings.StartsLeft,
            ["reset_after"] = 14_400_000,
            ["max_concurrency"] = settings.MaxConcurrency,
        },
    };

    private JsonObject ApplicationBody() => new()
    {
        ["id"] = StandInData.Id(settings.ApplicationId),
        ["name"] = "crewbot",
        ["icon"] = null,
        ["description"] = "",
        ["summary"] = "",
        ["bot_public"] = true,
        ["bot_require_code_grant"] = false,
        ["verify_key"] = new string('0', 64),
        ["flags"] = 0,
    };

    private JsonArray Register(string path, JsonArray definitions)
    {
        var registered = new JsonArray();
        foreach (var definition in definitions)
        {
            var command = definition!.DeepClone().AsObject();
            if (settings.GivesCommandIds)
            {
                command["id"] = NextId();
                command["application_id"] = StandInData.Id(settings.ApplicationId);
                command["version"] = NextId();
            }

            registered.Add(command);
        }

        _commands[path] = registered;
        return registered.DeepClone().AsArray();
    }

    private (int Status, JsonNode? Body) FirstAnswer(string id) =>
        !settings.Records || _answered.TryAdd(id, true)
            ? (204, null)
            : (400, new JsonObject { ["message"] = "Interaction has already been acknowledged.", ["code"] = 40060 });

    private JsonObject Create(ulong channel, JsonNode? written)
    {
        var id = NextId();
        var nonce = written?["nonce"]?.ToString();
        if (nonce is not null && written!["enforce_nonce"]?.GetValue<bool>() is true)
        {
            var first = _nonces.GetOrAdd(nonce, id);
            if (first != id)
            {
                return StandInData.Message(Number(first), channel, settings.ApplicationId, written);
            }
        }

        Interlocked.Increment(ref _created);
        return StandInData.Message(Number(id), channel, settings.ApplicationId, written);
    }

    // Its id is the person's with another last digit, the same at every asking.
    private static JsonObject DirectChannel(JsonNode? written) => new()
    {
        ["id"] = StandInData.Id(Number(written!["recipient_id"]!.GetValue<string>()) ^ 1),
        ["type"] = 1,
        ["recipients"] = new JsonArray(),
    };

    private static JsonObject Thread(string id, JsonNode? written) => new()
    {
        ["id"] = id,
        ["type"] = 11,
        ["name"] = written?["name"]?.DeepClone(),
        ["guild_id"] = StandInData.Id(StandInData.GuildId),
        ["parent_id"] = StandInData.Id(StandInData.ChannelId),
    };
}
