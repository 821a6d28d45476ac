namespace CrewBot.Chat.Commands;

/// <summary>What a shorthand made of a person's words.</summary>
/// <param name="Options">Option names and texts, in the order they were said.</param>
/// <param name="NotUnderstood">Words that found no place.</param>
public sealed record Expansion(IReadOnlyList<KeyValuePair<string, string>> Options, IReadOnlyList<string> NotUnderstood);
