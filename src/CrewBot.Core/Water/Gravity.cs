namespace CrewBot.Core.Water;

internal static class Gravity
{
    /// <summary>Standard gravity, m/s² (exact by definition, third CGPM, 1901).</summary>
    public const double Standard = 9.80665;
}
