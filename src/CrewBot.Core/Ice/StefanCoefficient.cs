namespace CrewBot.Core.Ice;

/// <summary>How readily ice grows in the Stefan form.</summary>
/// <param name="Metric">In cm/√(°C·day).</param>
public readonly record struct StefanCoefficient(double Metric)
{
    private static readonly double MetricOfCustomary = 2.54 * Math.Sqrt(1.8);

    /// <summary>In inches/√(°F·day).</summary>
    public double Customary => Metric / MetricOfCustomary;

    public static StefanCoefficient FromCustomary(double customary) => new(customary * MetricOfCustomary);
}
