using UnitsNet;

namespace CrewBot.Core.Water;

/// <summary>Picks the lightest lure of a ladder of weights that does a job.</summary>
public static class LureWeight
{
    /// <summary>Finds the lightest that gets down to a depth in time.</summary>
    /// <param name="ladder">The weights to choose from, each heavier than the one before.</param>
    /// <param name="material">Mean density of the lure.</param>
    /// <param name="speedShare">
    /// Its terminal speed as a share of the bare sphere's, as in <see cref="SinkingBody"/>.
    /// </param>
    /// <param name="line">The line behind it; null for a free fall.</param>
    /// <param name="depth">Depth, above 0 and at most 200 m.</param>
    /// <param name="within">The longest acceptable drop.</param>
    /// <param name="water">Water temperature, from 0 to 30 °C inclusive.</param>
    /// <returns>The weight; null when none on the ladder does it.</returns>
    /// <remarks>Drop time by <see cref="Drop.To"/>.</remarks>
    /// <exception cref="ArgumentException"><paramref name="ladder"/> does not rise.</exception>
    /// <exception cref="ArgumentOutOfRangeException">Another argument lies outside its range.</exception>
    public static Mass? LightestToReach(
        IReadOnlyList<Mass> ladder,
        Density material,
        double speedShare,
        LineInWater? line,
        Length depth,
        Duration within,
        Temperature water) =>
        Lightest(
            ladder,
            weight => Drop.Reaches(depth, new SinkingBody(weight, material, speedShare), line, water, within));

    /// <summary>
    /// Finds the lightest that hangs at a depth with the line leaning no more than a given angle at the hole.
    /// </summary>
    /// <param name="ladder">The weights to choose from, each heavier than the one before.</param>
    /// <param name="material">Mean density of the lure.</param>
    /// <param name="speedShare">
    /// Its terminal speed as a share of the bare sphere's, as in <see cref="SinkingBody"/>.
    /// </param>
    /// <param name="line">The line.</param>
    /// <param name="depth">Depth, above 0 and at most 200 m.</param>
    /// <param name="current">Current, from 0 to 1 m/s.</param>
    /// <param name="greatestLean">The greatest acceptable angle from the vertical at the hole, up to 80°.</param>
    /// <param name="water">Water temperature, from 0 to 30 °C inclusive.</param>
    /// <returns>The weight; null when none on the ladder does it.</returns>
    /// <remarks>Lean by <see cref="Blowback.AtDepth"/>.</remarks>
    /// <exception cref="ArgumentException"><paramref name="ladder"/> does not rise.</exception>
    /// <exception cref="ArgumentOutOfRangeException">Another argument lies outside its range.</exception>
    public static Mass? LightestToHold(
        IReadOnlyList<Mass> ladder,
        Density material,
        double speedShare,
        LineInWater line,
        Length depth,
        Speed current,
        Angle greatestLean,
        Temperature water) =>
        Lightest(
            ladder,
            weight =>
            {
                var body = new SinkingBody(weight, material, speedShare);
                return Blowback.AtDepth(depth, body, line, current, water) is { } hang
                    && hang.AtHole.Radians <= greatestLean.Radians;
            });

    private static Mass? Lightest(IReadOnlyList<Mass> ladder, Func<Mass, bool> suffices)
    {
        for (var rung = 1; rung < ladder.Count; rung++)
        {
            if (!(ladder[rung].Kilograms > ladder[rung - 1].Kilograms))
            {
                throw new ArgumentException("Each weight must be heavier than the one before.", nameof(ladder));
            }
        }

        foreach (var weight in ladder)
        {
            if (suffices(weight))
            {
                return weight;
            }
        }

        return null;
    }
}
