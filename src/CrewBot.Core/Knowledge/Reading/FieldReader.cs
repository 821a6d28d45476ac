using System.Text.Json.Nodes;

namespace CrewBot.Core.Knowledge.Reading;

/// <summary>Reads the fields of one object, notes every misfit, and goes on.</summary>
/// <remarks>
/// Bound by hand rather than by a serializer: that stops at the first misfit and words it for programmers, and its
/// metadata over quantity types took twice as long from a cold start, which every single command pays.
/// </remarks>
internal sealed class FieldReader(JsonObject fields, string path, List<Misfit> misfits)
{
    private readonly HashSet<string> known = [];

    /// <summary>A field that has to be there.</summary>
    public T Required<T>(string field, Func<StatedValue, T> read)
    {
        if (Find(field) is { } stated)
        {
            return read(stated);
        }

        misfits.Add(new Misfit(PathTo(field), "This field is missing: a new record states every field."));
        return default!;
    }

    /// <summary>A field that may be left out, of a value type.</summary>
    public T? Optional<T>(string field, Func<StatedValue, T> read)
        where T : struct => Find(field) is { } stated ? read(stated) : null;

    /// <summary>A list that may be left out.</summary>
    public IReadOnlyList<T>? OptionalList<T>(string field, Func<StatedValue, T> read) =>
        Find(field) is { } stated ? ListOf(stated, read) : null;

    public string Text(string field) => Required(field, ValueReader.Text);

    public bool Flag(string field) => Optional(field, ValueReader.Flag) ?? false;

    public T Name<T>(string field)
        where T : struct, Enum => Required(field, ValueReader.Name<T>);

    public IReadOnlyList<T> List<T>(string field, Func<StatedValue, T> read) =>
        Required(field, stated => ListOf(stated, read));

    public Spread<T> Spread<T>(string field, Func<StatedValue, T> read)
        where T : IComparable<T> => Inner(field, inner => new Spread<T>
        {
            Low = inner.Required("low", read),
            High = inner.Required("high", read),
        });

    public ByMood<T> ByMood<T>(string field, Func<StatedValue, T> read) => Inner(field, inner => new ByMood<T>
    {
        Negative = inner.Required("negative", read),
        Neutral = inner.Required("neutral", read),
        Positive = inner.Required("positive", read),
    });

    public ByMood<T>? OptionalByMood<T>(string field, Func<StatedValue, T> read) =>
        fields[field] is null ? null : ByMood(field, read);

    public BySize<T> BySize<T>(string field, Func<StatedValue, T> read) => Inner(field, inner => new BySize<T>
    {
        Small = inner.Required("small", read),
        Typical = inner.Required("typical", read),
        Large = inner.Required("large", read),
        Trophy = inner.Required("trophy", read),
    });

    /// <summary>Values by a free or fixed name.</summary>
    public IReadOnlyDictionary<TKey, T> Entries<TKey, T>(
        string field, Func<string, StatedValue, TKey> readName, Func<StatedValue, T> read)
        where TKey : notnull => Required(field, stated =>
    {
        var entries = new Dictionary<TKey, T>();
        if (stated.Node is not JsonObject named)
        {
            stated.Refuse("Write an object of names with their values: { … }.");
            return entries;
        }

        foreach (var (name, node) in named)
        {
            var entry = new StatedValue(node!, $"{stated.Path}.{name}", misfits);
            entries[readName(name, entry)] = read(entry);
        }

        return entries;
    });

    /// <summary>An object within the object.</summary>
    public T Inner<T>(string field, Func<FieldReader, T> read) => Required(field, stated => ObjectOf(stated, read));

    /// <summary>An object within the object that may be left out.</summary>
    public T? OptionalInner<T>(string field, Func<FieldReader, T> read)
        where T : class => Find(field) is { } stated ? ObjectOf(stated, read) : null;

    /// <summary>Reads an object field by field and refuses what it does not know.</summary>
    public static T ObjectOf<T>(StatedValue stated, Func<FieldReader, T> read)
    {
        if (stated.Node is not JsonObject fields)
        {
            stated.Refuse("Write an object of fields: { … }.");
            return default!;
        }

        var inner = new FieldReader(fields, stated.Path, stated.Misfits);
        var value = read(inner);
        inner.RefuseUnknown();
        return value;
    }

    /// <summary>Reads a list, one value after the other.</summary>
    public static IReadOnlyList<T> ListOf<T>(StatedValue stated, Func<StatedValue, T> read)
    {
        if (stated.Node is not JsonArray items)
        {
            stated.Refuse("Write a list: [ … ].");
            return [];
        }

        var values = new List<T>(items.Count);
        for (var i = 0; i < items.Count; i++)
        {
            var path = $"{stated.Path}[{i}]";
            if (items[i] is { } node)
            {
                values.Add(read(new StatedValue(node, path, stated.Misfits)));
            }
            else
            {
                stated.Misfits.Add(new Misfit(path, "Null says nothing: write a value or take it out."));
            }
        }

        return values;
    }

    private void RefuseUnknown() => misfits.AddRange(fields
        .Where(field => !known.Contains(field.Key))
        .Select(field => new Misfit(PathTo(field.Key), "There is no such field: check its spelling.")));

    private StatedValue? Find(string field)
    {
        known.Add(field);
        return fields[field] is { } node ? new StatedValue(node, PathTo(field), misfits) : null;
    }

    private string PathTo(string field) => path.Length == 0 ? field : $"{path}.{field}";
}
