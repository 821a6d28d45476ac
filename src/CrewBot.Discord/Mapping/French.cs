using System.Reflection;
using System.Text.Json;

namespace CrewBot.Discord.Mapping;

/// <summary>
/// The French of descriptions, by their English: one file a command family in <c>French</c>, and <c>shared.json</c> for
/// what several say. A text that is missing shows in English.
/// </summary>
internal sealed class French
{
    private const string Locale = "fr";
    private const string Folder = "french/";
    private readonly Dictionary<string, string> _texts = new(ReadAll());

    public IReadOnlyCollection<string> Known => _texts.Keys;

    public IReadOnlyDictionary<string, string>? Of(string english) =>
        _texts.TryGetValue(english, out var text) ? new Dictionary<string, string> { [Locale] = text } : null;

    private static IEnumerable<KeyValuePair<string, string>> ReadAll()
    {
        var assembly = Assembly.GetExecutingAssembly();
        return assembly.GetManifestResourceNames()
            .Where(name => name.StartsWith(Folder, StringComparison.Ordinal))
            .SelectMany(name => Read(assembly.GetManifestResourceStream(name)!));
    }

    private static Dictionary<string, string> Read(Stream file)
    {
        using (file)
        {
            return JsonSerializer.Deserialize(file, FrenchJson.Default.DictionaryStringString)!;
        }
    }
}
