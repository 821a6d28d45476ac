namespace CrewBot.Core.Pictures;

/// <summary>A spot with what was reported of it.</summary>
/// <param name="Name">What the crew calls it.</param>
/// <param name="Latest">The newest report in words.</param>
/// <param name="Reports">Earliest first.</param>
public sealed record IceSpot(string Name, string Latest, IReadOnlyList<ReportedIce> Reports)
{
    /// <summary>
    /// Bad news stands there, or no number is ever given: what is said is a warning, and no lines are drawn that a report could be
    /// held against.
    /// </summary>
    public bool IsBad { get; init; }
}
