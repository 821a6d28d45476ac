using System.Text.Json.Nodes;

namespace CrewBot.Discord.Tests.Mapping;

/// <summary>What stands where in an answer as it was sent.</summary>
internal static class SentAnswer
{
    /// <summary>The flag of what its asker alone sees.</summary>
    public const int Ephemeral = 64;

    public static string Title(JsonNode answer) => answer["data"]!["embeds"]![0]!["title"]!.GetValue<string>();

    public static string Description(JsonNode answer) => answer["data"]!["embeds"]![0]!["description"]!.GetValue<string>();

    /// <summary>The buttons and lists below a card, from the answer's data.</summary>
    public static IEnumerable<JsonNode> Buttons(JsonNode data) =>
        data["components"]!.AsArray().SelectMany(row => row!["components"]!.AsArray()).Select(button => button!);

    public static IEnumerable<string> Labels(JsonNode data) => Buttons(data).Select(button => button["label"]!.GetValue<string>());

    public static string IdOf(JsonNode answer, string label) =>
        Buttons(answer["data"]!).Single(button => button["label"]!.GetValue<string>() == label)["custom_id"]!.GetValue<string>();

    public static string IdOf(JsonNode form) => form["data"]!["custom_id"]!.GetValue<string>();
}
