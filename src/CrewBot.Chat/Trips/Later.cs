namespace CrewBot.Chat.Trips;

/// <summary>How a party that is late says when it is back.</summary>
/// <param name="Longer">How much later than it said; null when it gives a time.</param>
/// <param name="Until">The time; null when it gives how much later.</param>
public sealed record Later(TimeSpan? Longer, DayTime? Until);
