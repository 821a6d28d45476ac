using System.Reflection;
using System.Text.Json;

namespace CrewBot.Discord.Mapping;

/// <summary>The French of descriptions, by their English. A text that is missing shows in English.</summary>
internal sealed class French
{
    private const string Locale = "fr";
    private readonly Dictionary<string, string> _texts;

    public French()
    {
        using var resource = Assembly.GetExecutingAssembly().GetManifestResourceStream("french.json")!;
        _texts = JsonSerializer.Deserialize(resource, FrenchJson.Default.DictionaryStringString)!;
    }

    public IReadOnlyCollection<string> Known => _texts.Keys;

    public IReadOnlyDictionary<string, string>? Of(string english) =>
        _texts.TryGetValue(english, out var text) ? new Dictionary<string, string> { [Locale] = text } : null;
}
