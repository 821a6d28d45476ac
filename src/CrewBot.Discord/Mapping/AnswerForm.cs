using CrewBot.Chat.Commands;
using CrewBot.Discord.Wire;

namespace CrewBot.Discord.Mapping;

/// <summary>
/// The form that asks for a command's options, filled in as far as they are known. What is no field of it travels in the
/// form's id.
/// </summary>
internal sealed class AnswerForm(CommandCatalog catalog, PressCodec codec)
{
    private const int OneLine = 1;
    private const int Paragraph = 2;
    private const int LongestOnALine = 60;

    /// <summary>
    /// The form for a command that was called without what it needs and takes it in a person's own words; null when the call
    /// can be answered as it is.
    /// </summary>
    public ModalResponse? For(string path, IReadOnlyDictionary<string, string> options) =>
        catalog.TryFind(path, out var handler)
        && handler.Info is { Shorthand.Words: { } words } info
        && !options.ContainsKey(words.Name)
        && info.Options.Any(option => option.IsRequired && !options.ContainsKey(option.Name))
            ? Of(new Press(PressKind.Open, path, options) { Fields = [words.Name] })
            : null;

    /// <summary>The form that a press opens; null when it names no field of a command that there is.</summary>
    public ModalResponse? Of(Press press)
    {
        if (!catalog.TryFind(press.Path, out var handler))
        {
            return null;
        }

        var info = handler.Info;
        var fields = press.Fields
            .Select(name => info.Options.FirstOrDefault(option => option.Name == name))
            .OfType<CommandOption>()
            .Take(ReplyAction.MostFields)
            .ToList();
        var unseen = press.Options.Where(option => !press.Fields.Contains(option.Key)).ToDictionary();
        return fields.Count > 0 && codec.Write(press with { Kind = PressKind.Form, Options = unseen }) is { } id
            ? new ModalResponse(new ModalBody(
                id, Shortening.Fit($"/{press.Path}", Limits.FormTitle), [.. fields.Select(field => Field(field, info, press))]))
            : null;
    }

    /// <summary>The command that a sent form asks: only what it asked for is taken from it.</summary>
    public static Dictionary<string, string> OptionsOf(Press form, IReadOnlyList<SubmittedComponent>? components)
    {
        var written = Read(components);
        var options = form.Options.Where(option => !form.Fields.Contains(option.Key)).ToDictionary();
        foreach (var name in form.Fields)
        {
            if (written.TryGetValue(name, out var text))
            {
                options[name] = text;
            }
        }

        return options;
    }

    private static Component Field(CommandOption option, CommandInfo info, Press press)
    {
        var isWords = info.Shorthand?.Words.Name == option.Name;
        var value = press.Options.GetValueOrDefault(option.Name);
        return new Component
        {
            Type = ComponentType.Label,
            Label = isWords ? "In your own words" : Shortening.Fit(LabelOf(option), Limits.FormLabel),
            Description = Shortening.Fit(option.Description, Limits.FormHint),
            Field = new Component
            {
                Type = ComponentType.TextInput,
                CustomId = option.Name,
                Style = isWords || value?.Length > LongestOnALine ? Paragraph : OneLine,
                Value = value is null ? null : Shortening.Fit(value, CommandText.Longest),
                MinLength = 1,
                MaxLength = CommandText.Longest,
                Placeholder = Shortening.Fit(option.Accepts, Limits.FormHint),
                Required = option.IsRequired || press.Fields.Count == 1,
            },
        };
    }

    private static string LabelOf(CommandOption option) =>
        $"{char.ToUpperInvariant(option.Name[0])}{option.Name[1..].Replace('-', ' ')}";

    // Old-style rows are read too.
    private static Dictionary<string, string> Read(IReadOnlyList<SubmittedComponent>? components)
    {
        var written = new Dictionary<string, string>();
        foreach (var component in components ?? [])
        {
            foreach (var field in component.Component is { } one ? [one] : component.Components ?? [component])
            {
                var text = field.Values is { } values ? string.Join(", ", values) : field.Value?.ToString();
                if (field.CustomId is { } id && !string.IsNullOrWhiteSpace(text))
                {
                    written[id] = text.Trim();
                }
            }
        }

        return written;
    }
}
