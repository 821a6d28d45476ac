using UnitsNet;

namespace CrewBot.Core.Rigs;

/// <summary>One place where a rig can break.</summary>
/// <param name="Place">What it is, as an angler would say it: "leader at the terminal knot".</param>
/// <param name="Strength">Strength of the line or part itself, above 0.</param>
/// <param name="EfficiencyLow">Least share of it that is left once tied, above 0; 1 for a part without a knot.</param>
/// <param name="EfficiencyHigh">
/// Greatest share, from <paramref name="EfficiencyLow"/> to 2. Braid may hold more than its label says, so 1 is no
/// limit.
/// </param>
/// <remarks>
/// Efficiencies are trade custom: ranges, quoted against the label unless said otherwise. Where a link has a knot at
/// each end, the worse knot's range counts.
/// </remarks>
/// <exception cref="ArgumentOutOfRangeException">A value lies outside its range.</exception>
public sealed record Link(string Place, Force Strength, double EfficiencyLow, double EfficiencyHigh)
{
    private const double MaxEfficiency = 2;

    /// <summary>Strength of the line or part itself.</summary>
    public Force Strength { get; } = Checked(Strength);

    /// <summary>Least share of the strength that is left once tied.</summary>
    public double EfficiencyLow { get; } =
        ValidRange.Positive(EfficiencyLow, MaxEfficiency, "of the strength", nameof(EfficiencyLow));

    /// <summary>Greatest share of the strength that is left once tied.</summary>
    public double EfficiencyHigh { get; } =
        ValidRange.Closed(EfficiencyHigh, EfficiencyLow, MaxEfficiency, "of the strength", nameof(EfficiencyHigh));

    /// <summary>The pull at which it may already break.</summary>
    public Force Low => Strength * EfficiencyLow;

    /// <summary>The pull at which it breaks at the latest.</summary>
    public Force High => Strength * EfficiencyHigh;

    private static Force Checked(Force strength)
    {
        ValidRange.Positive(strength.Newtons, "N", nameof(Strength));
        return strength;
    }
}
