using System.Buffers;
using System.Text.Encodings.Web;
using System.Text.Json;
using CrewBot.Storage.People;

namespace CrewBot.Chat.Privacy;

/// <summary>Writes what is held on a person as JSON: each table with its rows, nothing left out.</summary>
internal static class HeldJson
{
    private static readonly JsonWriterOptions Plain = new() { Indented = true, Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    public static ReadOnlyMemory<byte> Write(IReadOnlyList<HeldRows> held)
    {
        var bytes = new ArrayBufferWriter<byte>();
        using (var json = new Utf8JsonWriter(bytes, Plain))
        {
            json.WriteStartObject();
            foreach (var table in held)
            {
                json.WriteStartArray(held.Count(other => other.Table == table.Table) == 1 ? table.Table : $"{table.Table}.{table.Column}");
                foreach (var row in table.Rows)
                {
                    Write(json, row);
                }

                json.WriteEndArray();
            }

            json.WriteEndObject();
        }

        return bytes.WrittenMemory;
    }

    private static void Write(Utf8JsonWriter json, IReadOnlyDictionary<string, object?> row)
    {
        json.WriteStartObject();
        foreach (var (column, value) in row)
        {
            json.WritePropertyName(column);
            switch (value)
            {
                case null:
                    json.WriteNullValue();
                    break;
                case long whole:
                    json.WriteNumberValue(whole);
                    break;
                case double real:
                    json.WriteNumberValue(real);
                    break;
                case byte[] blob:
                    json.WriteBase64StringValue(blob);
                    break;
                default:
                    json.WriteStringValue(value.ToString());
                    break;
            }
        }

        json.WriteEndObject();
    }
}
