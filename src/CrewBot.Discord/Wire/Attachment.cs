namespace CrewBot.Discord.Wire;

/// <summary>A file someone sent. Its address is signed and dies within a day: fetch at once or keep the ids.</summary>
internal sealed record Attachment
{
    public Snowflake? Id { get; init; }
    public string? Filename { get; init; }
    public string? ContentType { get; init; }
    public long? Size { get; init; }
    public string? Url { get; init; }
    public int? Width { get; init; }
    public int? Height { get; init; }
}
