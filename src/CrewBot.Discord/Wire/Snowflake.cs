using System.Globalization;
using System.Text.Json.Serialization;

namespace CrewBot.Discord.Wire;

/// <summary>An id of the platform: 64 bits that sort by time, written in JSON as a decimal string.</summary>
[JsonConverter(typeof(SnowflakeConverter))]
internal readonly record struct Snowflake(ulong Value)
{
    public static bool TryParse(string? text, out Snowflake id)
    {
        var read = ulong.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var value);
        id = new Snowflake(value);
        return read;
    }

    public override string ToString() => Value.ToString(CultureInfo.InvariantCulture);
}
