namespace CrewBot.Core.Pictures;

/// <summary>One line of a race.</summary>
/// <param name="Name">Who it is, with their place.</param>
/// <param name="Total">Where they stand, in words.</param>
/// <param name="Points">Each change of their total, earliest first; 0 before.</param>
public sealed record Racer(string Name, string Total, IReadOnlyList<RacePoint> Points);
