namespace CrewBot.Core;

internal static class Gravity
{
    /// <summary>
    /// Standard gravity, m/s² (exact by definition, third General Conference on Weights and Measures, 1901).
    /// </summary>
    public const double Standard = 9.80665;
}
