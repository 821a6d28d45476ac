using UnitsNet;

namespace CrewBot.Core.Water;

/// <summary>The fall of a lure from rest at the surface, with the drag of the line that it takes down behind it.</summary>
/// <remarks>
/// <para>
/// Equation of motion of the sphere of equal volume with half the displaced water as added mass; drag of Clift and Gauvin
/// (1971); line drag by the laminar thin-cylinder law (<see cref="FallingLine"/>); line paid out equals depth reached.
/// The line's own inertia and the history force are left out: both are small beside the 25 % or so by which line drag
/// itself is uncertain. Spool and guide friction come on top: the figures are for a free spool.
/// </para>
/// <para>
/// With y = v², the equation over depth z is dy/dz = 2 (net force)/(moving mass). It is stiff once the lure is up to
/// speed, so each slice of water is crossed by an exponential Rosenbrock–Euler step, which solves the equation linearised
/// in y and z exactly (Hochbruck and Ostermann, 2010, Acta Numerica 19, section 2). The slices grow with depth as
/// ℓ sinh²(q), ℓ being the depth over which a body in still water gains its speed.
/// </para>
/// </remarks>
public static class Drop
{
    private const double MaxMetres = 200;
    private const double AddedMassOfSphere = 0.5; // potential flow
    private const double SliceStep = 0.06; // in q; keeps time and speed within 0.2 % of a fine solution in time
    private const int FewestSlices = 16;

    /// <summary>Computes the time to a depth and the speed there.</summary>
    /// <param name="body">The lure.</param>
    /// <param name="line">The line behind it; null for a body that falls free.</param>
    /// <param name="depth">Depth, above 0 and at most 200 m.</param>
    /// <param name="water">Water temperature, from 0 to 30 °C inclusive.</param>
    /// <returns>
    /// Time and speed; null when it never gets there, because the body does not sink or floating line holds it up.
    /// </returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="depth"/> or <paramref name="water"/> lies outside its range.</exception>
    public static DropResult? To(Length depth, SinkingBody body, LineInWater? line, Temperature water)
    {
        var metres = ValidRange.Positive(depth.Meters, MaxMetres, "m", nameof(depth));
        var state = FreshWater.StateAt(water);
        var weight = body.SubmergedNewtonsIn(state.Density);
        var tow = line is null ? default : new FallingLine(line, state);
        if (weight <= 0 || weight + (tow.NewtonsPerMetre * metres) <= 0)
        {
            return null;
        }

        var fall = new Fall(body, weight, tow, state);
        return fall.To(metres);
    }

    private readonly struct Fall
    {
        private readonly double _weight;
        private readonly double _movingMass;
        private readonly double _terminalSpeed;
        private readonly double _dragScale;
        private readonly double _reynoldsPerSpeed;
        private readonly FallingLine _line;

        public Fall(SinkingBody body, double weight, in FallingLine line, in WaterState water)
        {
            var viscosity = water.KinematicViscosity;
            _weight = weight;
            _line = line;
            _movingMass = body.Mass.Kilograms + (AddedMassOfSphere * water.Density * body.VolumeInCubicMetres);
            _terminalSpeed = Settling.TerminalSpeed(body, water);
            _dragScale = Math.PI / 8 * water.Density * viscosity * viscosity;
            // A body that sinks at half the sphere's speed has, at any speed, the sphere's drag at twice that speed.
            _reynoldsPerSpeed = body.DiameterInMetres / (body.SpeedShare * viscosity);
        }

        public DropResult To(double depth)
        {
            var startLength = _movingMass * _terminalSpeed * _terminalSpeed / (2 * _weight);
            var end = Math.Asinh(Math.Sqrt(depth / startLength));
            var slices = Math.Max(FewestSlices, (int)Math.Ceiling(end / SliceStep));

            // The first slice is so thin that drag has no part in it yet: free fall of the submerged weight.
            var reached = DepthAt(end / slices, startLength);
            var speedSquared = 2 * _weight * reached / _movingMass;
            var speed = Math.Sqrt(speedSquared);
            var time = 2 * reached / speed;

            for (var slice = 2; slice <= slices; slice++)
            {
                var next = slice == slices ? depth : DepthAt(end * slice / slices, startLength);
                var thickness = next - reached;
                speedSquared = Cross(reached, thickness, speed, speedSquared);
                var nextSpeed = Math.Sqrt(speedSquared);
                time += 2 * thickness / (speed + nextSpeed); // exact where v² changes evenly with depth
                (reached, speed) = (next, nextSpeed);
            }

            return new DropResult(Duration.FromSeconds(time), Speed.FromMetersPerSecond(speed));
        }

        private static double DepthAt(double q, double startLength)
        {
            var sinh = Math.Sinh(q);
            return startLength * sinh * sinh;
        }

        private double Cross(double depth, double thickness, double speed, double speedSquared)
        {
            var drag = _dragScale * SphereDrag.DragNumberAt(_reynoldsPerSpeed * speed, out var dragSlope);
            var lineDrag = _line.DragAt(depth, speed, out var lineSlopeInSpeed, out var lineSlopeInDepth);

            var perMass = 2 / _movingMass;
            var rate = perMass * (_weight + (_line.NewtonsPerMetre * depth) - drag - lineDrag);
            var rateInDepth = perMass * (_line.NewtonsPerMetre - lineSlopeInDepth);
            var slopeInSpeed = (_dragScale * _reynoldsPerSpeed * dragSlope) + lineSlopeInSpeed;
            var exponent = -perMass * slopeInSpeed / (2 * speed) * thickness;

            var (phi1, phi2) = ExponentialWeights(exponent);
            var next = speedSquared + (thickness * ((phi1 * rate) + (phi2 * thickness * rateInDepth)));
            // Where floating line all but stops the lure, the straight-line forecast may pass zero; the true speed does not.
            return Math.Max(next, speedSquared / 4);
        }

        /// <summary>(eˣ − 1)/x and (eˣ − 1 − x)/x², by their series where the difference would lose digits.</summary>
        private static (double Phi1, double Phi2) ExponentialWeights(double x)
        {
            if (Math.Abs(x) < 0.02)
            {
                var phi2 = (1.0 / 2) + (x * ((1.0 / 6) + (x * ((1.0 / 24) + (x / 120)))));
                return (1 + (x * phi2), phi2);
            }

            var phi1 = (Math.Exp(x) - 1) / x;
            return (phi1, (phi1 - 1) / x);
        }
    }
}
