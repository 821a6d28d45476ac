namespace CrewBot.Worker.Configuration;

/// <summary>One command to answer.</summary>
/// <param name="Command">The command as typed, or <c>-</c> to read it from standard input.</param>
/// <param name="Json">Print the reply as an object.</param>
/// <param name="Id">The request's id; null for a new one.</param>
/// <param name="At">The request's instant; null for now.</param>
internal sealed record SayArguments(string Command, bool Json, string? Id, DateTimeOffset? At);
