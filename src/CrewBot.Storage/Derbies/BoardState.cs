namespace CrewBot.Storage.Derbies;

/// <summary>What of a derby's standings the crew has been shown.</summary>
/// <param name="ShownAt">When the standings were last posted or edited.</param>
/// <param name="Leader">Who was last announced as leading, by a word of the caller's; null for nobody yet.</param>
/// <param name="LedAt">When that was announced.</param>
public sealed record BoardState(DateTimeOffset ShownAt, string? Leader, DateTimeOffset LedAt);
