namespace CrewBot.Discord.Wire;

/// <summary>Answer to autocomplete.</summary>
internal sealed record ChoicesResponse(ChoiceList Data)
{
    public ResponseType Type { get; } = ResponseType.Choices;
}
