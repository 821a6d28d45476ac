namespace CrewBot.Discord.Wire;

internal sealed record ChoiceList(IReadOnlyList<Choice> Choices);
