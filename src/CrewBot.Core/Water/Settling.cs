using UnitsNet;

namespace CrewBot.Core.Water;

/// <summary>The steady speed at which a body sinks with no line on it.</summary>
public static class Settling
{
    private const double RelativeTolerance = 1e-10;

    /// <summary>Computes the terminal speed: the speed at which drag equals the submerged weight.</summary>
    /// <param name="body">The sinking body; its <see cref="SinkingBody.SpeedShare"/> scales the sphere's speed.</param>
    /// <param name="water">Water temperature, from 0 to 30 °C inclusive.</param>
    /// <returns>The speed; zero for a body no denser than the water, which does not sink.</returns>
    /// <remarks>
    /// Force balance on the sphere of equal volume with the drag of Clift and Gauvin (1971). Good to 2–3 % for a bare
    /// round head of common jig weight, 5–8 % for bodies slow enough that Re is below 1000.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="water"/> lies outside 0 to 30 °C.</exception>
    public static Speed TerminalSpeed(SinkingBody body, Temperature water) =>
        Speed.FromMetersPerSecond(TerminalSpeed(body, FreshWater.StateAt(water)));

    internal static double TerminalSpeed(SinkingBody body, in WaterState water)
    {
        var weight = body.SubmergedNewtonsIn(water.Density);
        if (weight <= 0)
        {
            return 0;
        }

        var viscosity = water.KinematicViscosity;
        var reynolds = ReynoldsAtDragNumber(8 * weight / (Math.PI * water.Density * viscosity * viscosity));
        return body.SpeedShare * reynolds * viscosity / body.DiameterInMetres;
    }

    /// <summary>
    /// Solves Cd·Re² = <paramref name="dragNumber"/> by Newton's method on the logarithms, where the curve is almost
    /// straight (its slope runs from 1 in creeping flow to about 2), so that a handful of steps settle it.
    /// </summary>
    private static double ReynoldsAtDragNumber(double dragNumber)
    {
        var reynolds = Math.Min(dragNumber / 24, Math.Sqrt(dragNumber / 0.44)); // Stokes' and Newton's limits
        double step;
        do
        {
            var number = SphereDrag.DragNumberAt(reynolds, out var slope);
            step = Math.Log(dragNumber / number) * number / (reynolds * slope);
            reynolds *= Math.Exp(step);
        }
        while (Math.Abs(step) > RelativeTolerance);

        return reynolds;
    }
}
