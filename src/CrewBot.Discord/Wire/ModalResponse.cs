namespace CrewBot.Discord.Wire;

/// <summary>First answer that opens a form.</summary>
internal sealed record ModalResponse(ModalBody Data)
{
    public ResponseType Type { get; } = ResponseType.Modal;
}
