using UnitsNet;

namespace CrewBot.Core.Ice;

/// <summary>Thicknesses as whole nanometres, so that comparing and rounding never favour the thinner ice.</summary>
internal static class IceLength
{
    // Far below what a conversion of an inch to metres and back leaves over, far above what matters.
    private const double Noise = 1e-3;

    /// <summary>A measured thickness: what is cut off is lost.</summary>
    public static long Measured(Length thickness) => (long)Math.Floor(thickness.Nanometers + Noise);

    /// <summary>A required thickness: what is begun counts whole.</summary>
    public static long Required(Length thickness) => (long)Math.Ceiling(thickness.Nanometers - Noise);

    public static Length Of(long nanometres) => Length.FromNanometers(nanometres);
}
