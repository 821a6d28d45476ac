using System.Text.Json;
using System.Text.Json.Nodes;
using CrewBot.Discord.Wire;

namespace CrewBot.Discord.Tests.Wire;

/// <summary>Own samples of every wire object: with all fields, without the optional ones, and with nulls.</summary>
public sealed class SampleTests
{
    private static readonly string Folder = Path.Combine(AppContext.BaseDirectory, "Samples");

    /// <summary>Fields of the full samples that the bot has no use for, so that they are not modelled.</summary>
    private static readonly HashSet<string> Unused =
    [
        "version", "guild", "joined_at", "entitlements", "authorizing_integration_owners", "something_new", "avatar", "color",
        "v", "guilds", "shard", "components", "message", "flags", "nsfw", "application_id", "discriminator", "verify_key", "_trace",
        "last_message_id", "tts", "type", "ephemeral", "width", "code",
    ];

    public static TheoryData<string> Names =>
        [.. Directory.EnumerateFiles(Folder, "*.json").Select(file => Path.GetFileName(file)!)];

    [Theory]
    [MemberData(nameof(Names))]
    public void Sample_ReadAndWritten_SaysTheSame(string name)
    {
        var text = File.ReadAllText(Path.Combine(Folder, name));
        var shape = ShapeOf(name);

        var written = JsonNode.Parse(JsonSerializer.Serialize(JsonSerializer.Deserialize(text, shape, WireJson.Default), shape, WireJson.Default));

        var differences = new List<string>();
        Compare(JsonNode.Parse(text), written, "$", name.Contains(".full.", StringComparison.Ordinal), differences);
        Assert.Empty(differences);
    }

    [Fact]
    public void EveryReadShape_HasAFullSample()
    {
        string[] read =
        [
            nameof(Interaction), nameof(Ready), nameof(Hello), nameof(GatewayAdvice), nameof(Application), nameof(User),
            nameof(Guild), nameof(Channel), nameof(Message), nameof(RateLimitBody), nameof(ErrorBody), nameof(CommandDefinition),
        ];
        var sampled = Directory.EnumerateFiles(Folder, "*.full.json")
            .Select(file => Path.GetFileName(file).Split('.')[0])
            .ToHashSet(StringComparer.OrdinalIgnoreCase);

        Assert.All(read, shape => Assert.Contains(shape, sampled));
    }

    private static Type ShapeOf(string fileName)
    {
        var name = fileName.Split('.')[0];
        return typeof(Interaction).Assembly.GetTypes()
            .Single(type => type.Namespace == typeof(Interaction).Namespace
                && type.Name.Equals(name, StringComparison.OrdinalIgnoreCase));
    }

    /// <summary>What is written must be in the sample; of a full sample, what is in it must be written, unless unused.</summary>
    private static void Compare(JsonNode? sample, JsonNode? written, string path, bool full, List<string> differences)
    {
        switch (sample, written)
        {
            case (JsonObject wanted, JsonObject given):
                var names = full ? wanted.Select(field => field.Key) : given.Select(field => field.Key);
                foreach (var field in names.Where(field => wanted[field] is not null && given[field] is not null))
                {
                    Compare(wanted[field], given[field], $"{path}.{field}", full, differences);
                }

                differences.AddRange(names
                    .Where(field => (wanted[field] is null) != (given[field] is null) && !Unused.Contains(field))
                    .Select(field => $"{path}.{field} got lost or invented"));
                break;
            case (JsonArray wanted, JsonArray given) when wanted.Count == given.Count:
                for (var index = 0; index < wanted.Count; index++)
                {
                    Compare(wanted[index], given[index], $"{path}[{index}]", full, differences);
                }

                break;
            case (JsonValue wanted, JsonValue given) when wanted.ToString() == given.ToString():
                break;
            default:
                differences.Add($"{path}: {sample?.ToJsonString()} became {written?.ToJsonString()}");
                break;
        }
    }
}
