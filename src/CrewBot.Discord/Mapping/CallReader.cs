using System.Text.Json;
using CrewBot.Chat.Commands;
using CrewBot.Discord.Wire;

namespace CrewBot.Discord.Mapping;

/// <summary>Flattens a slash command: family, group and verb become the path, leaves become options as written.</summary>
internal static class CallReader
{
    public static (string Path, IReadOnlyList<InteractionOption> Leaves) Read(InteractionData data)
    {
        var path = data.Name ?? "";
        var options = data.Options ?? [];
        while (options is [{ Type: OptionType.Subcommand or OptionType.SubcommandGroup } step])
        {
            path += $" {step.Name}";
            options = step.Options ?? [];
        }

        return (path, options);
    }

    public static Dictionary<string, string> Texts(IReadOnlyList<InteractionOption> leaves, ResolvedData? resolved)
    {
        var texts = new Dictionary<string, string>();
        foreach (var leaf in leaves)
        {
            if (leaf.Name is { } name && TextOf(leaf, resolved) is { } text)
            {
                texts[name] = text;
            }
        }

        return texts;
    }

    private static string? TextOf(InteractionOption leaf, ResolvedData? resolved) => leaf.Value switch
    {
        null => null,
        { ValueKind: JsonValueKind.True } => "yes",
        { ValueKind: JsonValueKind.False } => "no",
        { ValueKind: JsonValueKind.String } text when leaf.Type is OptionType.Attachment =>
            Snowflake.TryParse(text.GetString(), out var id) && resolved?.Attachments?.GetValueOrDefault(id) is { } file
                ? MessageReader.Of(file)?.Text
                : null,
        { ValueKind: JsonValueKind.String } text when leaf.Type is OptionType.User => new Person(text.GetString()!).Text,
        { } other => other.ToString(),
    };
}
