using System.Globalization;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace CrewBot.Core.Knowledge;

/// <summary>Reads a quantity written with its unit, such as <c>"1/8 oz"</c> or <c>"24 ft"</c>.</summary>
/// <typeparam name="T">The quantity.</typeparam>
/// <param name="example">A good value, shown when one can't be read.</param>
/// <param name="from">Makes the quantity of a number and its unit; null when the unit does not fit.</param>
internal sealed class QuantityJsonConverter<T>(string example, Func<double, string, T?> from) : JsonConverter<T>
    where T : struct
{
    public override T Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
    {
        var text = reader.TokenType == JsonTokenType.String ? reader.GetString()! : "";
        var space = text.LastIndexOf(' ');
        if (space > 0 && Number(text[..space]) is { } number && from(number, text[(space + 1)..]) is { } quantity)
        {
            return quantity;
        }

        throw new UnfitValueException($"'{text}' can't be read; write a number and a unit, such as \"{example}\".");
    }

    public override void Write(Utf8JsonWriter writer, T value, JsonSerializerOptions options) =>
        throw new NotSupportedException("Knowledge is read, never written.");

    private static double? Number(string text)
    {
        var parts = text.Split('/');
        if (!double.TryParse(parts[0], NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number))
        {
            return null;
        }

        return parts switch
        {
            _ when !double.IsFinite(number) => null,
            [_] => number,
            [_, var below] when int.TryParse(below, CultureInfo.InvariantCulture, out var divisor) && divisor > 0 => number / divisor,
            _ => null,
        };
    }
}
