namespace CrewBot.Core.Weather;

/// <summary>Where the sun stands at an instant.</summary>
/// <param name="Declination">Degrees north of the equator.</param>
/// <param name="EquationOfTime">Minutes that a sundial is ahead of the clock.</param>
/// <remarks>NOAA's solar method after Meeus; angles in degrees, T in Julian centuries since 2000.</remarks>
public readonly record struct SunAt(double Declination, double EquationOfTime)
{
    private static readonly DateTimeOffset Epoch = new(2000, 1, 1, 12, 0, 0, TimeSpan.Zero);

    public static SunAt Of(DateTimeOffset instant)
    {
        var t = (instant - Epoch).TotalDays / 36525;
        var longitude = 280.46646 + (t * (36000.76983 + (0.0003032 * t)));
        var anomaly = 357.52911 + (t * (35999.05029 - (0.0001537 * t)));
        var node = 125.04 - (1934.136 * t);
        var apparent = longitude + Centre(t, anomaly) - 0.00569 - (0.00478 * Sin(node));
        var obliquity = Obliquity(t) + (0.00256 * Cos(node));
        var declination = double.RadiansToDegrees(Math.Asin(Sin(obliquity) * Sin(apparent)));
        return new SunAt(declination, EquationOf(t, longitude, anomaly, obliquity));
    }

    /// <summary>Cosine of the hour angle at a distance from the zenith: above 1 when the sun never comes so high, below -1 when it is always higher.</summary>
    public double CosineOfHourAngle(double latitude, double zenith) =>
        (Cos(zenith) / (Cos(latitude) * Cos(Declination))) - (Tan(latitude) * Tan(Declination));

    private static double Centre(double t, double anomaly) =>
        (Sin(anomaly) * (1.914602 - (t * (0.004817 + (0.000014 * t)))))
        + (Sin(2 * anomaly) * (0.019993 - (0.000101 * t)))
        + (0.000289 * Sin(3 * anomaly));

    private static double Obliquity(double t) =>
        23 + ((26 + ((21.448 - (t * (46.815 + (t * (0.00059 - (0.001813 * t)))))) / 60)) / 60);

    private static double EquationOf(double t, double longitude, double anomaly, double obliquity)
    {
        var eccentricity = 0.016708634 - (t * (0.000042037 + (0.0000001267 * t)));
        var y = Math.Pow(Tan(obliquity / 2), 2);
        return 4 * double.RadiansToDegrees(
            (y * Sin(2 * longitude))
            - (2 * eccentricity * Sin(anomaly))
            + (4 * eccentricity * y * Sin(anomaly) * Cos(2 * longitude))
            - (0.5 * y * y * Sin(4 * longitude))
            - (1.25 * eccentricity * eccentricity * Sin(2 * anomaly)));
    }

    private static double Sin(double degrees) => Math.Sin(double.DegreesToRadians(degrees));

    private static double Cos(double degrees) => Math.Cos(double.DegreesToRadians(degrees));

    private static double Tan(double degrees) => Math.Tan(double.DegreesToRadians(degrees));
}
