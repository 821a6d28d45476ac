using System.Buffers;
using System.Text.Encodings.Web;
using System.Text.Json;

namespace CrewBot.Chat.CatchFiles;

/// <summary>Writes a catch file as JSON: one object a fish, with the columns that say something.</summary>
internal static class CatchJson
{
    private static readonly JsonWriterOptions Plain = new() { Indented = true, Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    public static ReadOnlyMemory<byte> Write(IEnumerable<FileCatch> fish)
    {
        var bytes = new ArrayBufferWriter<byte>();
        using (var json = new Utf8JsonWriter(bytes, Plain))
        {
            json.WriteStartArray();
            foreach (var one in fish)
            {
                Write(json, one);
            }

            json.WriteEndArray();
        }

        return bytes.WrittenMemory;
    }

    private static void Write(Utf8JsonWriter json, FileCatch fish)
    {
        json.WriteStartObject();
        foreach (var column in CatchColumns.All)
        {
            if (column.Of(fish) is not { } text)
            {
                continue;
            }

            json.WritePropertyName(column.Name);
            if (column.IsNumber)
            {
                json.WriteRawValue(text);
            }
            else
            {
                json.WriteStringValue(text);
            }
        }

        json.WriteEndObject();
    }
}
