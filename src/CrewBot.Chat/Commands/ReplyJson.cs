using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace CrewBot.Chat.Commands;

/// <summary>A reply as one JSON object: the contract that scripts rely on.</summary>
[JsonSerializable(typeof(Reply))]
public sealed partial class ReplyJson : JsonSerializerContext
{
    // Text goes to a terminal or a file, never into a web page: °, – and names stay as they are.
    private static readonly ReplyJson Plain = new(WrittenWith(indented: true));

    private static readonly ReplyJson Short = new(WrittenWith(indented: false));

    /// <summary>Reads what <see cref="Write"/> or <see cref="WriteShort"/> wrote.</summary>
    public static Reply Read(string json) => JsonSerializer.Deserialize(json, Plain.Reply)!;

    /// <summary>Writes a reply for people and scripts to read.</summary>
    public static string Write(Reply reply) => JsonSerializer.Serialize(reply, Plain.Reply);

    /// <summary>Writes a reply to be kept, in one line: it is on the disk with every change.</summary>
    public static string WriteShort(Reply reply) => JsonSerializer.Serialize(reply, Short.Reply);

    private static JsonSerializerOptions WrittenWith(bool indented) => new()
    {
        PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
        WriteIndented = indented,
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
        Converters =
        {
            new JsonStringEnumConverter<Audience>(JsonNamingPolicy.KebabCaseLower),
            new JsonStringEnumConverter<ActionKind>(JsonNamingPolicy.KebabCaseLower),
        },
    };
}
