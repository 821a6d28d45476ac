using System.Text.Json.Nodes;

namespace CrewBot.Discord.StandIn;

/// <summary>One HTTP request as it came in.</summary>
/// <param name="Method">Upper case.</param>
/// <param name="Path">Below the API's base address, without a leading slash, with its query.</param>
/// <param name="Headers">Names without regard to case.</param>
/// <param name="Json">The body, or a multipart body's <c>payload_json</c>.</param>
/// <param name="Files">A multipart body's files.</param>
/// <param name="At">When it came in, by <see cref="System.Diagnostics.Stopwatch"/>.</param>
public sealed record RecordedRequest(
    string Method,
    string Path,
    IReadOnlyDictionary<string, string> Headers,
    JsonNode? Json,
    IReadOnlyList<RecordedFile> Files,
    long At);
