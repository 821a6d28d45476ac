using CrewBot.Core.Knowledge;
using CrewBot.Core.Rigs;
using UnitsNet;

namespace CrewBot.Core.Fish;

/// <summary>What to mind with a fish that may go back. Local rules always come first.</summary>
/// <remarks>
/// Depth: agencies advise against catch and release from 25 ft (North Dakota since about 2020; Utah) or 30 ft
/// (Minnesota; North Dakota 2002). Walleye through the ice died with probability 5 % from 10 m and 37 % from 12 m (Lyon,
/// Davis, Fincel and Chipps 2022). Air: gills can freeze at any temperature below freezing, eyes below about -12 °C (a
/// Wisconsin fish-health specialist, quoted in the press).
/// </remarks>
public static class HandlingCautions
{
    // Agencies say 30 ft; crews that measure in metres say 9.
    private static readonly Length StrongFrom = Length.FromMeters(9);

    private static readonly Temperature Freezing = Temperature.FromDegreesCelsius(0);
    private static readonly Temperature EyesFreeze = Temperature.FromDegreesCelsius(-12);

    /// <summary>Gives the cautions that fit: depth, then cold.</summary>
    /// <param name="species">The species; only one with a <see cref="Species.BarotraumaDepth"/> is hurt by depth.</param>
    /// <param name="depth">Where it was hooked, from 0 to 200 m; null when nobody said.</param>
    /// <param name="air">Air outside the hole; null when nobody said, or in a heated shelter.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="depth"/> lies outside its range.</exception>
    public static IReadOnlyList<Caution> For(Species species, Length? depth, Temperature? air)
    {
        List<Caution?> cautions =
        [
            depth is { } hooked ? OfDepth(species, hooked) : null,
            air is { } cold ? OfCold(cold) : null,
        ];
        return [.. cautions.OfType<Caution>()];
    }

    private static Caution? OfDepth(Species species, Length depth)
    {
        var swollen = BarotraumaExpansion.FactorFrom(depth, BarotraumaExpansion.SeaLevel);
        if (species.BarotraumaDepth is not { } limit || !AtLeast(depth, limit))
        {
            return null;
        }

        FormattableString trigger = $"{depth} against {limit} for {species.Name}: gas swells {swollen:0.0} times on the way up";
        return AtLeast(depth, StrongFrom)
            ? new($"A {species.Name} let go from {depth} may swim off and still die; slow reeling won't help. Keep it if local rules let you, then fish shallower or stop; don't pierce the bladder.", trigger)
            : new($"From {depth} a {species.Name} may not get back down. If it goes back, let it go at once; move shallower when you have enough. Local rules come first.", trigger);
    }

    private static Caution? OfCold(Temperature air) =>
        air < EyesFreeze ? new(
            $"At {air} gills and eyes freeze in moments: unhook it in the hole, without lifting it out if it is to go back.",
            $"{air} against {EyesFreeze}")
        : air < Freezing ? new(
            $"At {air} gills freeze: head in the hole, wet bare hands, camera ready before you lift it, and never lay it on ice or snow.",
            $"{air} against {Freezing}")
        : null;

    private static bool AtLeast(Length depth, Length limit) =>
        ExactLength.NanometresOf(depth) >= ExactLength.NanometresOf(limit);
}
