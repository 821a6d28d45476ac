using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.Json.Serialization.Metadata;

namespace CrewBot.Core.Knowledge;

/// <summary>Compares what a file states with what a record holds, and names every field that does not fit.</summary>
internal static class RecordShape
{
    /// <summary>Every misfit, its field given as a path; none when the record can be read.</summary>
    public static IEnumerable<Misfit> Misfits(JsonNode stated, JsonTypeInfo wanted, string path = "") =>
        wanted.Kind switch
        {
            JsonTypeInfoKind.Object => OfObject(stated, wanted, path),
            JsonTypeInfoKind.Dictionary => OfDictionary(stated, wanted, path),
            JsonTypeInfoKind.Enumerable => OfList(stated, wanted, path),
            _ => OfValue(stated, wanted, path),
        };

    private static IEnumerable<Misfit> OfObject(JsonNode stated, JsonTypeInfo wanted, string path)
    {
        if (stated is not JsonObject fields)
        {
            return [new(path, "Write an object of fields: { … }.")];
        }

        var known = wanted.Properties.ToDictionary(property => property.Name);
        return fields
            .SelectMany(field => known.TryGetValue(field.Key, out var property)
                ? OfField(field.Value, property, wanted.Options, Join(path, field.Key))
                : [new(Join(path, field.Key), "There is no such field: check its spelling.")])
            .Concat(known.Values
                .Where(property => property.IsRequired && !fields.ContainsKey(property.Name))
                .Select(property => new Misfit(Join(path, property.Name), "This field is missing: a new record states every field.")));
    }

    private static IEnumerable<Misfit> OfField(
        JsonNode? stated, JsonPropertyInfo property, JsonSerializerOptions options, string path) => stated switch
    {
        null when property.IsSetNullable => [],
        null => [new(path, "Null says nothing: write a value.")],
        _ => Misfits(stated, options.GetTypeInfo(property.PropertyType), path),
    };

    private static IEnumerable<Misfit> OfDictionary(JsonNode stated, JsonTypeInfo wanted, string path)
    {
        if (stated is not JsonObject entries)
        {
            return [new(path, "Write an object of names with their values: { … }.")];
        }

        var key = wanted.Options.GetTypeInfo(wanted.KeyType!);
        var value = wanted.Options.GetTypeInfo(wanted.ElementType!);
        return entries.SelectMany(entry => OfValue(JsonValue.Create(entry.Key), key, Join(path, entry.Key))
            .Concat(Misfits(entry.Value!, value, Join(path, entry.Key))));
    }

    private static IEnumerable<Misfit> OfList(JsonNode stated, JsonTypeInfo wanted, string path)
    {
        if (stated is not JsonArray items)
        {
            return [new(path, "Write a list: [ … ].")];
        }

        var item = wanted.Options.GetTypeInfo(wanted.ElementType!);
        return items.SelectMany((entry, index) => entry is null
            ? [new($"{path}[{index}]", "Null says nothing: write a value or take it out.")]
            : Misfits(entry, item, $"{path}[{index}]"));
    }

    private static IEnumerable<Misfit> OfValue(JsonNode stated, JsonTypeInfo wanted, string path)
    {
        try
        {
            stated.Deserialize(wanted);
            return [];
        }
        catch (UnfitValueException unfit)
        {
            return [new(path, unfit.Remedy)];
        }
        catch (JsonException)
        {
            return [new(path, RemedyFor(Nullable.GetUnderlyingType(wanted.Type) ?? wanted.Type))];
        }
    }

    private static string RemedyFor(Type wanted) =>
        wanted == typeof(bool) ? "Write true or false, without quotes."
        : wanted == typeof(int) ? "Write a whole number, without quotes."
        : wanted == typeof(double) ? "Write a number, without quotes."
        : "Write text in quotes.";

    private static string Join(string path, string field) => path.Length == 0 ? field : $"{path}.{field}";
}
