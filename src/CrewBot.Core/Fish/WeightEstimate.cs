using CrewBot.Core.Knowledge;
using UnitsNet;

namespace CrewBot.Core.Fish;

/// <summary>What a fish nobody weighed may have weighed. Say "about", and from what.</summary>
public sealed record WeightEstimate(Mass Weight, WeightBasis Basis)
{
    /// <summary>Estimates from the girth when it was taken, and else from the length alone.</summary>
    /// <param name="species">The species.</param>
    /// <param name="total">Total length, above 0.</param>
    /// <param name="girth">Around the thickest part, above 0; null when it was not taken.</param>
    /// <returns>
    /// Null when there is neither a girth nor a standard weight; <see cref="StandardWeight.Of(Species, Length)"/> says
    /// why, and a girth would help.
    /// </returns>
    /// <exception cref="ArgumentOutOfRangeException">Length or girth is not above 0.</exception>
    public static WeightEstimate? Of(Species species, Length total, Length? girth) =>
        girth is { } around ? new(GirthWeight.Of(species, total, around), WeightBasis.LengthAndGirth)
        : StandardWeight.Of(species, total).Weight is { } weight ? new(weight, WeightBasis.StandardWeight)
        : null;
}
