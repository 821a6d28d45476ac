namespace CrewBot.Discord.Wire;

/// <summary>Describes an uploaded file: its id is the <c>n</c> of the body part <c>files[n]</c>.</summary>
internal sealed record AttachmentPlaceholder
{
    public required string Id { get; init; }
    public string? Filename { get; init; }
    public string? Description { get; init; }
}
