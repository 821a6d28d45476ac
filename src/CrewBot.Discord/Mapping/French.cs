using System.Reflection;
using System.Text.Json;

namespace CrewBot.Discord.Mapping;

/// <summary>The French of descriptions, by their English. A text that is missing shows in English.</summary>
internal sealed class French
{
    private const string Locale = "fr";
    private readonly Dictionary<string, string> texts;

    public French()
    {
        using var resource = Assembly.GetExecutingAssembly().GetManifestResourceStream("french.json")!;
        texts = JsonSerializer.Deserialize(resource, FrenchJson.Default.DictionaryStringString)!;
    }

    public IReadOnlyCollection<string> Known => texts.Keys;

    public IReadOnlyDictionary<string, string>? Of(string english) =>
        texts.TryGetValue(english, out var text) ? new Dictionary<string, string> { [Locale] = text } : null;
}
