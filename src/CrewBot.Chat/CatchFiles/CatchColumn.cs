namespace CrewBot.Chat.CatchFiles;

/// <summary>A column of a catch file.</summary>
/// <param name="Name">As the first row and the JSON object name it.</param>
/// <param name="IsNumber">A JSON number rather than a text.</param>
/// <param name="Of">What it says of a fish; null for nothing.</param>
internal sealed record CatchColumn(string Name, bool IsNumber, Func<FileCatch, string?> Of);
