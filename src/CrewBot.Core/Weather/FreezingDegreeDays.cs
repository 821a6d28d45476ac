namespace CrewBot.Core.Weather;

/// <summary>Freezing degree-days: how much frost the weather has brought. It says nothing about how thick any ice is.</summary>
public static class FreezingDegreeDays
{
    /// <summary>One day's: the freezing point less the mean of maximum and minimum. A thaw day is negative.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The minimum is above the maximum, or either is beyond ±90 °C.</exception>
    public static DegreeDays Of(DayTemperatures day)
    {
        ValidRange.Closed(day.Most.DegreesCelsius, -90, 90, "°C", nameof(day));
        ValidRange.Closed(day.Least.DegreesCelsius, -90, day.Most.DegreesCelsius, "°C", nameof(day));
        return new DegreeDays(-day.Mean);
    }

    /// <summary>The running sum after each day: thaw days subtract, and it never falls below zero.</summary>
    /// <param name="days">Earliest first.</param>
    /// <remarks>The bounded sum of engineering practice.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">A day's minimum is above its maximum, or either is beyond ±90 °C.</exception>
    public static IReadOnlyList<DegreeDays> Accumulate(IEnumerable<DayTemperatures> days)
    {
        var sum = 0.0;
        return [.. days.Select(day => new DegreeDays(sum = Math.Max(0, sum + Of(day).Celsius)))];
    }
}
