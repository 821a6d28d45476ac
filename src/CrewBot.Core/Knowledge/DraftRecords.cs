using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.Json.Serialization.Metadata;

namespace CrewBot.Core.Knowledge;

/// <summary>Records as the files state them, later files laid over earlier ones, before they are read as what they are.</summary>
internal sealed class DraftRecords(List<KnowledgeFault> faults)
{
    private static readonly JsonDocumentOptions Lenient =
        new() { CommentHandling = JsonCommentHandling.Skip, AllowTrailingCommas = true };

    private readonly Dictionary<string, Dictionary<string, Draft>> _sections = [];
    private readonly Dictionary<string, string> _files = [];

    /// <summary>Takes in one file.</summary>
    public void Add(string file, Stream content)
    {
        try
        {
            if (JsonNode.Parse(content, documentOptions: Lenient) is not JsonObject root)
            {
                faults.Add(new(file, "", "", "The file must be one object of sections, such as { \"species\": [ … ] }."));
                return;
            }

            foreach (var (section, records) in root)
            {
                AddSection(file, section, records);
            }
        }
        catch (JsonException unreadable)
        {
            faults.Add(new(file, "", "", $"Not valid JSON at line {unreadable.LineNumber + 1}: mend it there."));
        }
    }

    /// <summary>Reads one section as records and marks it done.</summary>
    public RecordSet<T> Take<T>(string section, JsonTypeInfo<T> type)
        where T : TradeRecord
    {
        var records = new List<T>();
        if (_sections.Remove(section, out var drafts))
        {
            foreach (var (key, draft) in drafts)
            {
                try
                {
                    records.Add(draft.Content.Deserialize(type)!);
                }
                catch (JsonException wrong)
                {
                    faults.Add(new(draft.File, $"{section}/{key}", FieldOf(wrong), RemedyOf(wrong)));
                }
            }
        }

        return new RecordSet<T>(records);
    }

    /// <summary>Reports every section that nobody took.</summary>
    public void RefuseLeftOver()
    {
        foreach (var (section, drafts) in _sections)
        {
            faults.Add(new(drafts.Values.First().File, section, "", "There is no such section: check its spelling."));
        }
    }

    /// <summary>The file that had the last word on a record.</summary>
    public string FileOf(string section, string key) => _files.GetValueOrDefault($"{section}/{key}", "");

    private void AddSection(string file, string section, JsonNode? records)
    {
        if (records is not JsonArray list)
        {
            faults.Add(new(file, section, "", "A section must be a list of records: [ … ]."));
            return;
        }

        var drafts = _sections.TryGetValue(section, out var known) ? known : _sections[section] = [];
        foreach (var record in list)
        {
            if (record is JsonObject content && content["key"] is JsonValue value && value.TryGetValue<string>(out var key))
            {
                Lay(file, section, drafts, key, content);
            }
            else
            {
                faults.Add(new(file, section, "key", "Every record needs a key, such as \"walleye\"."));
            }
        }
    }

    private void Lay(string file, string section, Dictionary<string, Draft> drafts, string key, JsonObject content)
    {
        _files[$"{section}/{key}"] = file;
        if (!drafts.TryGetValue(key, out var below))
        {
            drafts[key] = new Draft(file, content);
            return;
        }

        if (below.File == file)
        {
            faults.Add(new(file, $"{section}/{key}", "key", "This key stands twice in the file: keep one."));
            return;
        }

        foreach (var (field, stated) in content)
        {
            below.Content[field] = stated?.DeepClone();
        }

        drafts[key] = below with { File = file };
    }

    private static string FieldOf(JsonException wrong) => (wrong.Path ?? "").TrimStart('$', '.');

    private static string RemedyOf(JsonException wrong)
    {
        var message = wrong.Message;
        var tail = message.IndexOf(" Path: ", StringComparison.Ordinal);
        return tail > 0 ? message[..tail] : message;
    }

    private sealed record Draft(string File, JsonObject Content);
}
