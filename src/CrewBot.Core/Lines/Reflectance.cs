using UnitsNet;

namespace CrewBot.Core.Lines;

/// <summary>How much light a line's surface throws back under water: the less, the harder it is to see.</summary>
public static class Reflectance
{
    /// <summary>Refractive index of fresh water in yellow light, 0–20 °C (handbook value, from memory).</summary>
    public const double IndexOfWater = 1.333;

    /// <summary>Computes the share of light reflected straight back, ((n₁ − n₂)/(n₁ + n₂))², by Fresnel.</summary>
    /// <param name="lineIndex">Refractive index of the line, from 1 to 3: nylon about 1.53, PVDF about 1.42.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="lineIndex"/> lies outside 1 to 3.</exception>
    public static Ratio AtNormalIncidence(double lineIndex)
    {
        ValidRange.Closed(lineIndex, 1, 3, "(refractive index)", nameof(lineIndex));
        var contrast = (lineIndex - IndexOfWater) / (lineIndex + IndexOfWater);
        return Ratio.FromDecimalFractions(contrast * contrast);
    }
}
