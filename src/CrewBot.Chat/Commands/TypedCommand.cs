namespace CrewBot.Chat.Commands;

/// <summary>A command as read from a typed line.</summary>
/// <param name="Path">Family and verb.</param>
/// <param name="Options">Option names and texts.</param>
public sealed record TypedCommand(string Path, IReadOnlyDictionary<string, string> Options);
