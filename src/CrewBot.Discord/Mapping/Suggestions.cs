using CrewBot.Chat.Commands;
using CrewBot.Discord.Wire;

namespace CrewBot.Discord.Mapping;

/// <summary>What could be meant by the option that is being written. Answered in the time of a keystroke.</summary>
internal sealed class Suggestions(Dispatcher dispatcher)
{
    public async Task<ChoicesResponse> ForAsync(InteractionData data, Caller caller, CancellationToken cancellationToken)
    {
        var (path, leaves) = CallReader.Read(data);
        var focused = leaves.FirstOrDefault(leaf => leaf.Focused is true);
        var texts = await dispatcher.SuggestAsync(caller, path, focused?.Name ?? "", focused?.Value?.ToString() ?? "", cancellationToken);
        return new ChoicesResponse(new ChoiceList(
        [
            .. texts
                .Where(text => text.Length is > 0 and <= Limits.ChoiceText) // a cut value would be another value
                .Distinct()
                .Take(Limits.Choices)
                .Select(text => new Choice { Name = text, Value = text }),
        ]));
    }
}
