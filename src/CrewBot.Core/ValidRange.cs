namespace CrewBot.Core;

/// <summary>The one check behind every "outside the source's range" refusal. NaN never passes.</summary>
internal static class ValidRange
{
    /// <summary>
    /// Returns <paramref name="value"/> when it lies from <paramref name="least"/> to <paramref name="most"/>, both
    /// included.
    /// </summary>
    public static double Closed(double value, double least, double most, string unit, string parameter) =>
        value >= least && value <= most
            ? value
            : throw Outside(value, FormattableString.Invariant($"from {least:G6} to {most:G6} {unit}"), parameter);

    /// <summary>Returns <paramref name="value"/> when it is above zero and at most <paramref name="most"/>.</summary>
    public static double Positive(double value, double most, string unit, string parameter) =>
        value > 0 && value <= most
            ? value
            : throw Outside(value, FormattableString.Invariant($"above 0 and at most {most:G6} {unit}"), parameter);

    /// <summary>Returns <paramref name="value"/> when it is above zero and finite.</summary>
    public static double Positive(double value, string unit, string parameter) =>
        value > 0 && double.IsFinite(value) ? value : throw Outside(value, $"above 0 {unit}", parameter);

    /// <summary>Returns <paramref name="value"/> when it is zero or above, and finite.</summary>
    public static double NotNegative(double value, string unit, string parameter) =>
        value >= 0 && double.IsFinite(value) ? value : throw Outside(value, $"0 {unit} or more", parameter);

    private static ArgumentOutOfRangeException Outside(double value, string accepted, string parameter) =>
        new(parameter, value, $"Must be {accepted}.");
}
