using UnitsNet;

namespace CrewBot.Core.Trips;

/// <summary>A forecast for every hour of a day, from a few points of it.</summary>
public static class HourlyForecast
{
    /// <summary>
    /// Every full hour from one time to another: between two points in a straight line, before the first and after the last as
    /// that one. Common practice; the wind of a real day comes in gusts.
    /// </summary>
    /// <param name="points">At least one, each time once.</param>
    /// <param name="from">The first hour, rounded up.</param>
    /// <param name="until">The last hour, rounded down; not before <paramref name="from"/>.</param>
    /// <exception cref="ArgumentException">No point.</exception>
    public static IReadOnlyList<ForecastPoint> Between(IReadOnlyCollection<ForecastPoint> points, TimeOnly from, TimeOnly until)
    {
        if (points.Count == 0)
        {
            throw new ArgumentException("A forecast has at least one point.", nameof(points));
        }

        var sorted = points.OrderBy(point => point.Clock).ToList();
        var first = from.Hour + (from.Minute > 0 ? 1 : 0);
        return [.. Enumerable.Range(first, Math.Max(0, until.Hour - first + 1)).Select(hour => At(sorted, new TimeOnly(hour, 0)))];
    }

    private static ForecastPoint At(List<ForecastPoint> sorted, TimeOnly clock)
    {
        var before = sorted.FindLast(point => point.Clock <= clock) ?? sorted[0];
        var after = sorted.Find(point => point.Clock >= clock) ?? sorted[^1];
        var span = (after.Clock - before.Clock).TotalHours;
        var share = before.Clock >= after.Clock ? 0 : (clock - before.Clock).TotalHours / span;
        return new ForecastPoint(
            clock,
            Temperature.FromDegreesCelsius(Mixed(before.Air.DegreesCelsius, after.Air.DegreesCelsius, share)),
            Speed.FromMetersPerSecond(Mixed(before.Wind.MetersPerSecond, after.Wind.MetersPerSecond, share)));
    }

    private static double Mixed(double one, double other, double share) => one + ((other - one) * share);
}
