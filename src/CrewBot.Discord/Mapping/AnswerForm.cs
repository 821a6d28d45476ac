using CrewBot.Chat.Commands;
using CrewBot.Discord.Wire;

namespace CrewBot.Discord.Mapping;

/// <summary>
/// The form that a command opens when it was called without what it needs and takes it in a person's own words. What was
/// given travels in the form's id; the words come back in one text field.
/// </summary>
internal sealed class AnswerForm(CommandCatalog catalog, PressCodec codec)
{
    private const int Paragraph = 2;

    /// <summary>The form for this call, or null when the call can be answered as it is.</summary>
    public ModalResponse? For(string path, IReadOnlyDictionary<string, string> options)
    {
        if (!catalog.TryFind(path, out var handler)
            || handler.Info is not { Shorthand.Words: { } words } info
            || options.ContainsKey(words.Name)
            || info.Options.All(option => !option.IsRequired || options.ContainsKey(option.Name))
            || codec.Write(new Press(PressKind.Form, path, options)) is not { } id)
        {
            return null;
        }

        var title = Shortening.Fit($"/{path}", Limits.FormTitle);
        return new ModalResponse(new ModalBody(id, title, [Field(words)]));
    }

    private static Component Field(CommandOption words) => new()
    {
        Type = ComponentType.Label,
        Label = "In your own words",
        Description = Shortening.Fit(words.Description, Limits.FormHint),
        Field = new Component
        {
            Type = ComponentType.TextInput,
            CustomId = words.Name,
            Style = Paragraph,
            MinLength = 1,
            MaxLength = CommandText.Longest,
            Placeholder = Shortening.Fit(words.Accepts, Limits.FormHint),
            Required = true,
        },
    };

    /// <summary>What was written into a form's fields, by the fields' ids; old-style rows are read too.</summary>
    public static Dictionary<string, string> Read(IReadOnlyList<SubmittedComponent>? components)
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
