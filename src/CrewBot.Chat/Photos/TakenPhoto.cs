namespace CrewBot.Chat.Photos;

/// <summary>A photo that came with a fish.</summary>
/// <param name="Reference">What names it for good.</param>
/// <param name="Hash">The SHA-256 of the file in hexadecimal digits; null when it could not be had.</param>
/// <param name="Content">The whole file; empty when it could not be had.</param>
/// <param name="Fault">Why it could not be had, in a line; null for a mere link, which is not followed.</param>
public sealed record TakenPhoto(string Reference, string? Hash, ReadOnlyMemory<byte> Content, string? Fault);
