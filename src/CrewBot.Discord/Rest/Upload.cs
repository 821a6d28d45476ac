namespace CrewBot.Discord.Rest;

/// <summary>A file to send. The name is ASCII: others are mangled on the way.</summary>
internal sealed record Upload(string Name, string ContentType, ReadOnlyMemory<byte> Content)
{
    /// <summary>What a picture shows, for whoever can't see it.</summary>
    public string? Description { get; init; }
}
