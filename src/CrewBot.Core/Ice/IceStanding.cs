using UnitsNet;

namespace CrewBot.Core.Ice;

/// <summary>What the reports of one water come to at one spot.</summary>
/// <param name="Least">The least effective thickness of the reports that support an answer; null when none does.</param>
/// <param name="Supporting">The reports it rests on.</param>
/// <param name="Blocking">Bad news that blocks the spot.</param>
/// <param name="Why">Why there is no figure; null when there is one.</param>
public sealed record IceStanding(
    Length? Least, IReadOnlyList<IceReport> Supporting, IReadOnlyList<IceReport> Blocking, FormattableString? Why)
{
    /// <summary>Since when somebody must say how warm it has been, where that alone is missing; null where it is not.</summary>
    public DateTimeOffset? AsksAirSince { get; init; }

    /// <summary>The report that holds the least hole: whose word the figure is; null when there is none.</summary>
    public IceReport? Governing => Supporting
        .Where(report => report.Holes.Count > 0)
        .MinBy(report => report.Holes.Min(hole => hole.Effective).Nanometers);

    /// <summary>The least and the most ice in any hole of the supporting reports, whatever its kind; null when there is none.</summary>
    public (Length Least, Length Most)? Spread
    {
        get
        {
            var holes = Supporting.SelectMany(report => report.Holes).Select(hole => hole.Total).ToList();
            return holes.Count > 0 ? (holes.Min(), holes.Max()) : null;
        }
    }
}
