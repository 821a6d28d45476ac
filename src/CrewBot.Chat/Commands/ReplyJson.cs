using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace CrewBot.Chat.Commands;

/// <summary>A reply as one JSON object: the contract that scripts rely on.</summary>
[JsonSerializable(typeof(Reply))]
public sealed partial class ReplyJson : JsonSerializerContext
{
    // Text goes to a terminal or a file, never into a web page: °, – and names stay as they are.
    private static readonly ReplyJson Plain = new(new JsonSerializerOptions
    {
        PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
        WriteIndented = true,
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
        Converters =
        {
            new JsonStringEnumConverter<Audience>(JsonNamingPolicy.KebabCaseLower),
            new JsonStringEnumConverter<ActionKind>(JsonNamingPolicy.KebabCaseLower),
        },
    });

    /// <summary>Reads what <see cref="Write"/> wrote.</summary>
    public static Reply Read(string json) => JsonSerializer.Deserialize(json, Plain.Reply)!;

    /// <summary>Writes a reply.</summary>
    public static string Write(Reply reply) => JsonSerializer.Serialize(reply, Plain.Reply);
}
