using CrewBot.Core.Knowledge;
using UnitsNet;

namespace CrewBot.Core.Fish;

/// <summary>
/// What a fish can hardly measure or weigh, so that a slipped digit or unit is asked about before it is kept.
/// </summary>
/// <remarks>All bounds are judgement: outside them, ask; never refuse.</remarks>
public static class Plausibility
{
    // A trophy is 74–80 % of the record length (Gabelhouse 1984, from memory), so records are up to 1.35 trophies.
    private const double LongestInTrophies = 1.4;

    // Relative weights of 59–124 % were found in an Alaskan lake trout stock, 66–88 % in nine of ten Wisconsin cisco.
    private const double LightestOfStandard = 0.5;
    private const double HeaviestOfStandard = 1.5;

    // Without a standard weight the species' own usual sizes are scaled, and less is known.
    private const double LightestOfScaled = 0.4;
    private const double HeaviestOfScaled = 2;

    /// <summary>The longest total length to take without asking: 1.4 times the species' trophy.</summary>
    public static Length LongestLength(Species species) => species.Lengths.Trophy * LongestInTrophies;

    /// <summary>The weights to take without asking.</summary>
    /// <param name="species">The species.</param>
    /// <param name="total">Total length, above 0.</param>
    /// <returns>
    /// 50–150 % of the standard weight; without one, 40–200 % of the nearest usual size of the species, scaled with the
    /// cube of the length.
    /// </returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="total"/> is not above 0.</exception>
    public static WeightRange ExpectedWeight(Species species, Length total) =>
        StandardWeight.Of(species, total).Weight is { } standard
            ? new WeightRange(standard * LightestOfStandard, standard * HeaviestOfStandard)
            : Around(Scaled(species, total));

    private static WeightRange Around(Mass weight) => new(weight * LightestOfScaled, weight * HeaviestOfScaled);

    private static Mass Scaled(Species species, Length total)
    {
        var nearest = Enum.GetValues<FishSize>().MinBy(size => Math.Abs(Math.Log(total / species.Lengths[size])));
        return species.Weights[nearest] * Math.Pow(total / species.Lengths[nearest], 3);
    }
}
