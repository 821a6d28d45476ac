using UnitsNet;

namespace CrewBot.Core.Water;

/// <summary>
/// The fall of a lure from rest at the surface, with the drag of the line that it takes down behind it.
/// </summary>
/// <remarks>
/// Equation of motion of the sphere of equal volume with half the displaced water as added mass; drag of Clift and
/// Gauvin (1971); line drag by the laminar thin-cylinder law (<see cref="FallingLine"/>); line paid out equals depth
/// reached. Line drag is uncertain by about 25 %. Left out: the line's own inertia, which is small; the history force,
/// which makes a measured start from rest a third to a half longer, 0.1–0.2 s for a jig; and friction of spool and
/// guides, which may be larger than all of these. The figures are for a free spool.
/// </remarks>
public static class Drop
{
    private const double MaxMetres = 200;

    /// <summary>Computes the time to a depth and the speed there.</summary>
    /// <param name="body">The lure.</param>
    /// <param name="line">The line behind it; null for a body that falls free.</param>
    /// <param name="depth">Depth, above 0 and at most 200 m.</param>
    /// <param name="water">Water temperature, from 0 to 30 °C inclusive.</param>
    /// <returns>
    /// Time and speed; null when it never gets there, because the body does not sink or floating line holds it up.
    /// </returns>
    /// <exception cref="ArgumentOutOfRangeException">
    /// <paramref name="depth"/> or <paramref name="water"/> lies outside its range.
    /// </exception>
    public static DropResult? To(Length depth, SinkingBody body, LineInWater? line, Temperature water)
    {
        var metres = ValidRange.Positive(depth.Meters, MaxMetres, "m", nameof(depth));
        return FallOf(metres, body, line, water)?.To(metres);
    }

    /// <summary>Whether a lure gets to a depth within a time; the arguments as those of <see cref="To"/>.</summary>
    internal static bool Reaches(Length depth, SinkingBody body, LineInWater? line, Temperature water, Duration within)
    {
        var metres = ValidRange.Positive(depth.Meters, MaxMetres, "m", nameof(depth));
        var seconds = within.Seconds;
        if (FallOf(metres, body, line, water) is not { } fall)
        {
            return false;
        }

        // Most lures are far too light or more than heavy enough, and known to be without the whole fall.
        foreach (var parts in fall.IsPulledByLine ? default(ReadOnlySpan<int>) : [1, 10])
        {
            var (least, most) = fall.SecondsTo(metres, parts);
            if (most <= seconds || least > seconds)
            {
                return most <= seconds;
            }
        }

        return fall.To(metres).Time.Seconds <= seconds;
    }

    private static Fall? FallOf(double metres, SinkingBody body, LineInWater? line, Temperature water)
    {
        var state = FreshWater.StateAt(water);
        var weight = body.SubmergedNewtonsIn(state.Density);
        var tow = line is null ? default : new FallingLine(line, state);
        return weight <= 0 || weight + (tow.NewtonsPerMetre * metres) <= 0 ? null : new Fall(body, weight, tow, state);
    }
}
