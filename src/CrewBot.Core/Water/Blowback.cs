using UnitsNet;

namespace CrewBot.Core.Water;

/// <summary>Where a current holds a lure that hangs still on its line.</summary>
/// <param name="AtHole">Angle of the line from the vertical at the hole.</param>
/// <param name="Offset">How far downstream of the hole the lure hangs.</param>
/// <param name="Depth">How deep it hangs.</param>
/// <param name="LineOut">Line between the hole and the lure.</param>
/// <remarks>
/// Equilibrium of a flexible line in a uniform current: the towed-cable equations with cross-flow drag by
/// <see cref="CylinderDrag"/> (Reynolds number on the whole current), along-line coefficient 0.02 and the line's
/// submerged weight; the lure's drag is the sphere's, divided by the square of its speed share. Solved upward from
/// the lure by the classical fourth-order Runge–Kutta method.
/// </remarks>
public sealed record Blowback(Angle AtHole, Length Offset, Length Depth, Length LineOut)
{
    private const double MaxLineOutMetres = 400;
    private const double MaxDepthMetres = 200;
    private const double MaxCurrent = 1;

    /// <summary>
    /// The greatest lean, 80° from the vertical, that is still answered for. Past it the line lies nearly flat under
    /// the ice and every metre of depth takes six or more of line (judgement).
    /// </summary>
    public static Angle GreatestLean { get; } = Angle.FromDegrees(80);

    /// <summary>Finds where the lure hangs with a given length of line out.</summary>
    /// <param name="lineOut">Line below the hole, above 0 and at most 400 m.</param>
    /// <param name="body">The lure.</param>
    /// <param name="line">The line; null for the bare lure, as if on a line that the water does not feel.</param>
    /// <param name="current">Current, the same at every depth, from 0 to 1 m/s.</param>
    /// <param name="water">Water temperature, from 0 to 30 °C inclusive.</param>
    /// <returns>
    /// The equilibrium; null when the lure does not sink, floating line lifts it, or the line leans past
    /// <see cref="GreatestLean"/>.
    /// </returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument lies outside its range.</exception>
    public static Blowback? WithLineOut(
        Length lineOut, SinkingBody body, LineInWater? line, Speed current, Temperature water)
    {
        var metres = ValidRange.Positive(lineOut.Meters, MaxLineOutMetres, "m", nameof(lineOut));
        return Solve(body, line, current, water, metres, byDepth: false);
    }

    /// <summary>Finds the line needed to put the lure at a depth, and where it hangs then.</summary>
    /// <param name="depth">Depth of the lure, above 0 and at most 200 m.</param>
    /// <param name="body">The lure.</param>
    /// <param name="line">The line; null for the bare lure, as if on a line that the water does not feel.</param>
    /// <param name="current">Current, the same at every depth, from 0 to 1 m/s.</param>
    /// <param name="water">Water temperature, from 0 to 30 °C inclusive.</param>
    /// <returns>
    /// The equilibrium; null when the lure cannot be brought to that depth: it does not sink, floating line lifts it,
    /// or the line leans past <see cref="GreatestLean"/>.
    /// </returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument lies outside its range.</exception>
    public static Blowback? AtDepth(
        Length depth, SinkingBody body, LineInWater? line, Speed current, Temperature water)
    {
        var metres = ValidRange.Positive(depth.Meters, MaxDepthMetres, "m", nameof(depth));
        return Solve(body, line, current, water, metres, byDepth: true);
    }

    private static Blowback? Solve(
        SinkingBody body,
        LineInWater? line,
        Speed current,
        Temperature water,
        double span,
        bool byDepth)
    {
        var speed = ValidRange.Closed(current.MetersPerSecond, 0, MaxCurrent, "m/s", nameof(current));
        var state = FreshWater.StateAt(water);
        var weight = body.SubmergedNewtonsIn(state.Density);
        if (weight <= 0)
        {
            return null;
        }

        var lineWeight = line?.SubmergedNewtonsPerMetreIn(state.Density) ?? 0;
        if (speed == 0)
        {
            return weight + (lineWeight * span) <= 0
                ? null
                : new Blowback(Angle.Zero, Length.Zero, Length.FromMeters(span), Length.FromMeters(span));
        }

        var pull = LureDrag(body, speed, state);
        if (line is null)
        {
            return Straight(Math.Atan2(pull, weight), span, byDepth);
        }

        var hanging = new HangingLine(line.Diameter.Meters, lineWeight, speed, state);
        return hanging.Climb(pull, weight, span, byDepth, Math.Cos(GreatestLean.Radians)) is { } top
            ? new Blowback(
                Angle.FromRadians(Math.Atan2(top.Across, top.Up)),
                Length.FromMeters(top.Offset),
                Length.FromMeters(top.Rise),
                Length.FromMeters(top.LineOut))
            : null;
    }

    private static Blowback? Straight(double lean, double span, bool byDepth)
    {
        var cosine = Math.Cos(lean);
        var lineOut = byDepth ? span / cosine : span;
        return lean > GreatestLean.Radians
            ? null
            : new Blowback(
                Angle.FromRadians(lean),
                Length.FromMeters(lineOut * Math.Sin(lean)),
                Length.FromMeters(lineOut * cosine),
                Length.FromMeters(lineOut));
    }

    private static double LureDrag(SinkingBody body, double speed, in WaterState water)
    {
        var reynolds = speed * body.DiameterInMetres / water.KinematicViscosity;
        var sphere = Math.PI / 8 * water.Density * water.KinematicViscosity * water.KinematicViscosity
            * SphereDrag.DragNumberAt(reynolds, out _);
        return sphere / (body.SpeedShare * body.SpeedShare);
    }
}
