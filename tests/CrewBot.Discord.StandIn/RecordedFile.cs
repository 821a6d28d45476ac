namespace CrewBot.Discord.StandIn;

/// <summary>A file of a multipart body, with its part's header as sent.</summary>
public sealed record RecordedFile(string Disposition, string? ContentType, byte[] Content);
