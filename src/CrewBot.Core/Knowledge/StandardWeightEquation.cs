using UnitsNet;

namespace CrewBot.Core.Knowledge;

/// <summary>
/// A published standard weight: log₁₀ Ws = intercept + slope · log₁₀ TL, Ws in grams, TL the total length in millimetres.
/// </summary>
/// <remarks>The metric set only: published English sets are the same line rounded, and some are misprinted.</remarks>
public sealed record StandardWeightEquation
{
    public required double Intercept { get; init; }

    public required double Slope { get; init; }

    /// <summary>The shortest fish it holds for.</summary>
    public required Length MinimumLength { get; init; }

    public required string Source { get; init; }
}
