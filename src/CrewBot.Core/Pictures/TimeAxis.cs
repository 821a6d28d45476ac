namespace CrewBot.Core.Pictures;

/// <summary>The time that a chart shows, left to right.</summary>
/// <param name="From">Its start.</param>
/// <param name="To">Its end, later than its start.</param>
/// <param name="Ticks">Marks between the two, earliest first.</param>
public sealed record TimeAxis(DateTimeOffset From, DateTimeOffset To, IReadOnlyList<TimeTick> Ticks);
