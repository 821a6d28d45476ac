namespace CrewBot.Discord.Wire;

internal sealed record ModalBody(string CustomId, string Title, IReadOnlyList<Component> Components);
