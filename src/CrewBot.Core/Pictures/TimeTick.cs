namespace CrewBot.Core.Pictures;

/// <summary>A mark on an axis of time.</summary>
/// <param name="At">Where it is.</param>
/// <param name="Label">The same as the crew says it: "9:00", "Jan 12".</param>
public sealed record TimeTick(DateTimeOffset At, string Label);
