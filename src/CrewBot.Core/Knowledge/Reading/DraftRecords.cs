using System.Text.Json;
using System.Text.Json.Nodes;

namespace CrewBot.Core.Knowledge.Reading;

/// <summary>Records as the files state them, a crew's laid over the built-in ones, before they are read.</summary>
internal sealed class DraftRecords(List<KnowledgeFault> faults)
{
    private static readonly JsonDocumentOptions Lenient = new()
    {
        CommentHandling = JsonCommentHandling.Skip,
        AllowTrailingCommas = true,
        AllowDuplicateProperties = false,
    };

    private readonly Dictionary<string, Dictionary<string, Draft>> _sections = [];
    private readonly List<(string File, string Section)> _stated = [];
    private readonly HashSet<string> _taken = [];

    /// <summary>Takes in one file.</summary>
    public void Add(LaidFile file, Stream content)
    {
        try
        {
            if (JsonNode.Parse(content, documentOptions: Lenient) is not JsonObject root)
            {
                faults.Add(new(file.Name, "", "", "Write one object of sections, such as { \"species\": [ … ] }."));
                return;
            }

            if (file.ByCrew)
            {
                RefuseBrokenText(root);
            }

            foreach (var (section, records) in root)
            {
                AddSection(file, section, records);
            }
        }
        catch (JsonException unreadable)
        {
            faults.Add(new(file.Name, "", "", RemedyFor(unreadable)));
        }
        catch (InvalidOperationException)
        {
            faults.Add(new(file.Name, "", "", "Some text in it is not whole UTF-8: save the file again as UTF-8."));
        }
    }

    /// <summary>Reads one section as records and marks it done.</summary>
    public RecordSet<T> Take<T>(string section, Func<FieldReader, T> read)
        where T : TradeRecord
    {
        _taken.Add(section);
        var records = new List<T>();
        foreach (var (key, draft) in DraftsOf(section))
        {
            var misfits = new List<Misfit>();
            var record = FieldReader.ObjectOf(new StatedValue(draft.Content, "", misfits), read);
            if (misfits.Count == 0)
            {
                records.Add(record);
            }

            faults.AddRange(misfits.Select(misfit =>
                new KnowledgeFault(draft.File.Name, $"{section}/{key}", misfit.Field, misfit.Remedy)));
        }

        return new RecordSet<T>(records);
    }

    /// <summary>Reports every section that nobody took.</summary>
    public void RefuseLeftOver() => faults.AddRange(_stated
        .Where(entry => !_taken.Contains(entry.Section))
        .Select(entry => new KnowledgeFault(
            entry.File, entry.Section, "", "There is no such section: check its spelling.")));

    /// <summary>The file that had the last word on a record.</summary>
    public LaidFile FileOf(string section, string key) => DraftsOf(section)[key].File;

    private Dictionary<string, Draft> DraftsOf(string section) =>
        _sections.TryGetValue(section, out var drafts) ? drafts : _sections[section] = [];

    private void AddSection(LaidFile file, string section, JsonNode? records)
    {
        _stated.Add((file.Name, section));
        if (records is not JsonArray list)
        {
            faults.Add(new(file.Name, section, "", "A section must be a list of records: [ … ]."));
            return;
        }

        var drafts = DraftsOf(section);
        var seen = new HashSet<string>();
        foreach (var record in list)
        {
            if (record is not JsonObject content
                || content["key"] is not JsonValue value
                || !value.TryGetValue<string>(out var key))
            {
                faults.Add(new(file.Name, section, "key", "Every record needs a key, such as \"walleye\"."));
            }
            else if (!seen.Add(key))
            {
                faults.Add(new(file.Name, $"{section}/{key}", "key", "This key stands twice in the file: keep one."));
            }
            else
            {
                drafts[key] = new Draft(file, Laid(drafts.GetValueOrDefault(key), file, content));
            }
        }
    }

    private static JsonObject Laid(Draft? below, LaidFile file, JsonObject content)
    {
        if (!file.ByCrew)
        {
            return content;
        }

        var laid = below?.Content ?? [];
        MergePatch.Apply(laid, content);
        return laid;
    }

    // Text is decoded only when it is read, and half a character then throws: read all of it here, once.
    private static void RefuseBrokenText(JsonNode? node)
    {
        switch (node)
        {
            case JsonObject fields:
                fields.ToList().ForEach(field => RefuseBrokenText(field.Value));
                break;
            case JsonArray items:
                items.ToList().ForEach(RefuseBrokenText);
                break;
            case JsonValue value:
                value.TryGetValue<string>(out _);
                break;
        }
    }

    private static string RemedyFor(JsonException unreadable) => unreadable.LineNumber is { } line
        ? $"Not valid JSON at line {line + 1}: mend it there."
        : $"Not valid JSON: {unreadable.Message}";

    private sealed record Draft(LaidFile File, JsonObject Content);
}
