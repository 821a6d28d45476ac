using CrewBot.Chat.Commands;
using CrewBot.Discord.Wire;

namespace CrewBot.Discord.Mapping;

/// <summary>What could be meant by the option that is being written. Answered from memory, in the time of a keystroke.</summary>
internal sealed class Suggestions(CommandCatalog catalog)
{
    public ChoicesResponse For(InteractionData data)
    {
        var (path, leaves) = CallReader.Read(data);
        var focused = leaves.FirstOrDefault(leaf => leaf.Focused is true);
        var option = catalog.TryFind(path, out var handler)
            ? handler.Info.Options.FirstOrDefault(option => option.Name == focused?.Name)
            : null;
        var begun = focused?.Value?.ToString() ?? "";
        return new ChoicesResponse(new ChoiceList(
        [
            .. (option?.Suggest(begun) ?? [])
                .Where(text => text.Length is > 0 and <= Limits.ChoiceText) // a cut value would be another value
                .Distinct()
                .Take(Limits.Choices)
                .Select(text => new Choice { Name = text, Value = text }),
        ]));
    }
}
