using System.Globalization;
using System.Text.Json.Serialization;

namespace CrewBot.Discord.Wire;

/// <summary>An id of the platform: 64 bits that sort by time, written in JSON as a decimal string.</summary>
[JsonConverter(typeof(SnowflakeConverter))]
internal readonly record struct Snowflake(ulong Value)
{
    private const long FirstMillisecond = 1420070400000; // 2015-01-01, from where the platform counts
    private const int BitsBelowTime = 22;

    /// <summary>When the thing was made; the id says it.</summary>
    public DateTimeOffset CreatedAt => DateTimeOffset.FromUnixTimeMilliseconds((long)(Value >> BitsBelowTime) + FirstMillisecond);

    public static bool TryParse(string? text, out Snowflake id)
    {
        var read = ulong.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var value);
        id = new Snowflake(value);
        return read;
    }

    public static bool TryParse(ReadOnlySpan<byte> utf8, out Snowflake id)
    {
        var read = ulong.TryParse(utf8, NumberStyles.None, CultureInfo.InvariantCulture, out var value);
        id = new Snowflake(value);
        return read;
    }

    public override string ToString() => Value.ToString(CultureInfo.InvariantCulture);
}
