using System.Text.Json;
using System.Text.Json.Nodes;
using CrewBot.Discord.Wire;
using CsCheck;

namespace CrewBot.Discord.Tests.Wire;

/// <summary>Whatever is added to, taken from or blanked in an interaction, it reads, or is refused as malformed JSON.</summary>
public sealed class ToleranceTests
{
    private static readonly string Sample =
        File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Samples", "interaction.command.full.json"));

    [Fact]
    public void Interaction_FieldsAddedRemovedAndNulled_StillReads()
    {
        Gen.Select(Gen.Int, Gen.Double[0, 0.5]).Sample(
            (seed, share) =>
            {
                var random = new Random(seed);
                var json = Mutate(JsonNode.Parse(Sample)!, random, share, top: true)!.ToJsonString();

                var read = JsonSerializer.Deserialize(json, WireJson.Default.Interaction);

                return read!.Token == "interaction-marker-token";
            },
            iter: 300);
    }

    [Fact]
    public void Interaction_CutAnywhere_IsRefusedAsMalformed()
    {
        for (var length = 0; length < Sample.TrimEnd().Length; length += 7)
        {
            Assert.Throws<JsonException>(
                () => JsonSerializer.Deserialize(Sample[..length], WireJson.Default.Interaction));
        }
    }

    [Theory]
    [InlineData("\"1\"", 1UL)]
    [InlineData("1", 1UL)]
    [InlineData("\"18446744073709551615\"", ulong.MaxValue)]
    public void Snowflake_StringOrNumber_Reads(string json, ulong expected)
    {
        var user = JsonSerializer.Deserialize($$"""{"id":{{json}}}""", WireJson.Default.User);

        Assert.Equal(new Snowflake(expected), user!.Id);
        Assert.Equal($$"""{"id":"{{expected}}"}""", JsonSerializer.Serialize(user, WireJson.Default.User));
    }

    [Theory]
    [InlineData("\"x\"")]
    [InlineData("\"\"")]
    [InlineData("\"-1\"")]
    [InlineData("1.5")]
    [InlineData("true")]
    [InlineData("\"18446744073709551616\"")]
    public void Snowflake_NoId_IsRefusedAsMalformed(string json)
    {
        Assert.Throws<JsonException>(
            () => JsonSerializer.Deserialize($$"""{"id":{{json}}}""", WireJson.Default.User));
    }

    private static JsonNode? Mutate(JsonNode? node, Random random, double share, bool top)
    {
        switch (node)
        {
            case JsonObject item:
                // A number as the name: some objects are maps by id.
                var result = new JsonObject { [$"{random.Next()}"] = new JsonObject { ["new"] = 1 } };
                foreach (var (name, value) in item)
                {
                    var needed = top && name is "id" or "type" or "token";
                    if (needed || random.NextDouble() >= share)
                    {
                        result[name] = needed ? value?.DeepClone() : Mutate(value?.DeepClone(), random, share, top: false);
                    }
                    else if (random.Next(2) == 0)
                    {
                        result[name] = null;
                    }
                }

                return result;
            case JsonArray list:
                return new JsonArray([.. list.Select(value => Mutate(value?.DeepClone(), random, share, top: false))]);
            default:
                return node;
        }
    }
}
