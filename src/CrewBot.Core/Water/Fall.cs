using UnitsNet;

namespace CrewBot.Core.Water;

/// <summary>The equation of motion of a sinking lure, integrated over depth. All quantities are SI doubles.</summary>
/// <remarks>
/// Solved for ln v over ln z, v the speed and z the depth: free fall, terminal speed and the slowing by line are each
/// close to a straight line there. Once the lure is up to speed the equation is stiff, so each slice of water is
/// crossed by an exponential Rosenbrock–Euler step, which solves the equation linearised at the slice's top exactly
/// (Hochbruck and Ostermann 2010, Acta Numerica 19, section 2). The slices grow with depth as ℓ sinh²(q), ℓ being the
/// depth over which the body gains its speed in still water.
/// </remarks>
internal readonly struct Fall
{
    private const double AddedMassOfSphere = 0.5; // potential flow

    // In q; they keep time within 0.3 % and speed within 0.5 % of fine steps, within 0.1 % while the lure still gains speed.
    private const double SliceStep = 0.1;
    private const int FewestSlices = 20;

    private readonly double _weight;
    private readonly double _movingMass;
    private readonly double _terminalSpeed;
    private readonly double _dragScale;
    private readonly double _reynoldsPerSpeed;
    private readonly double _logReynoldsPerSpeed;
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
        _logReynoldsPerSpeed = Math.Log(_reynoldsPerSpeed);
    }

    /// <summary>The line sinks by itself, and may take the lure down quicker than it falls without.</summary>
    public bool IsPulledByLine => _line.NewtonsPerMetre > 0;

    /// <summary>Seconds that a fall to a depth in m takes behind line that does not sink: no less and no more, the closer the more parts.</summary>
    /// <remarks>
    /// In each part of the way the line out drags at least as at the part's top and at most as at its bottom, with a steady speed
    /// V for each. Drag grows at least in proportion to speed, so whatever a lure is off V fades at W/(mV) or faster, and costs or
    /// saves no more than m/W for each m/s: all of V at the start, and what V loses on the way down.
    /// </remarks>
    public (double Least, double Most) SecondsTo(double depth, int parts)
    {
        const double Tolerance = 1e-3;
        var part = depth / parts;
        var speed = _terminalSpeed;
        var (least, most) = (0.0, 0.0);
        for (var bottom = 1; bottom <= parts; bottom++)
        {
            least += part / speed;
            speed = SteadySpeed(bottom * part, speed, Tolerance);
            most += part / ((1 - Tolerance) * speed);
        }

        var secondsPerSpeed = _movingMass / WeightWith(depth);
        return (least - (secondsPerSpeed * (_terminalSpeed - speed)), most + (secondsPerSpeed * _terminalSpeed));
    }

    public DropResult To(double depth)
    {
        var startLength = _movingMass * _terminalSpeed * _terminalSpeed / (2 * _weight);
        var end = Math.Asinh(Math.Sqrt(depth / startLength));
        var slices = Math.Max(FewestSlices, (int)Math.Ceiling(end / SliceStep));

        // The first slice is so thin that drag has no part in it yet: free fall of the submerged weight.
        var (step, stretch) = (Math.Sinh(end / slices), Math.Cosh(end / slices));
        var (sinh, cosh) = (step, stretch);
        var reached = startLength * sinh * sinh;
        var speed = Math.Sqrt(2 * _weight * reached / _movingMass);
        var time = 2 * reached / speed;
        var (logReached, logSpeed) = (Math.Log(reached), Math.Log(speed));

        for (var slice = 2; slice <= slices; slice++)
        {
            (sinh, cosh) = ((sinh * stretch) + (cosh * step), (cosh * stretch) + (sinh * step)); // of q one step on
            var next = slice == slices ? depth : startLength * sinh * sinh;
            var logNext = Math.Log(next);
            var ratio = logNext - logReached;
            var gain = Cross(reached, logReached, ratio, speed, logSpeed);
            logSpeed += gain;
            var nextSpeed = Math.Exp(logSpeed);
            time += ((next / nextSpeed) - (reached / speed)) / (1 - (gain / ratio)); // exact for v as a power of z
            (reached, logReached, speed) = (next, logNext, nextSpeed);
        }

        return new DropResult(Duration.FromSeconds(time), Speed.FromMetersPerSecond(speed));
    }

    /// <summary>
    /// The steady speed behind so many m of line, or more by a share up to the tolerance: Newton's steps come down to it from a
    /// speed above.
    /// </summary>
    private double SteadySpeed(double line, double speed, double tolerance)
    {
        var weight = WeightWith(line);
        double step;
        do
        {
            var drag = _dragScale * SphereDrag.DragNumberAt(_reynoldsPerSpeed * speed, out var dragSlope);
            var lineDrag = _line.DragAt(line, speed, out var lineSlope, out _);
            step = (drag + lineDrag - weight) / ((_dragScale * _reynoldsPerSpeed * dragSlope) + lineSlope);
            speed -= step;
        }
        while (step > tolerance * speed);

        return speed;
    }

    /// <summary>What pulls down with so many m of line out, in N.</summary>
    private double WeightWith(double line) => _weight + (_line.NewtonsPerMetre * line);

    /// <summary>Crosses one slice, from a depth to e^ratio times it; the answer is the gain in ln v.</summary>
    private double Cross(double depth, double logDepth, double ratio, double speed, double logSpeed)
    {
        var rate = RateAt(depth, logDepth, speed, logSpeed, out var inLogSpeed, out var inLogDepth);
        var (phi1, phi2) = ExponentialWeights(inLogSpeed * ratio);
        return ratio * ((phi1 * rate) + (phi2 * ratio * inLogDepth));
    }

    /// <summary>d ln v / d ln z, with its slopes in ln v and in ln z.</summary>
    private double RateAt(
        double depth, double logDepth, double speed, double logSpeed, out double inLogSpeed, out double inLogDepth)
    {
        var drag = _dragScale * SphereDrag.DragNumberAt(
            _reynoldsPerSpeed * speed, _logReynoldsPerSpeed + logSpeed, out var dragSlope);
        var lineDrag = _line.DragAt(depth, speed, logDepth - logSpeed, out var lineSlopeInSpeed, out var lineSlopeInDepth);
        var perForce = depth / (_movingMass * speed * speed);
        var rate = perForce * (WeightWith(depth) - drag - lineDrag);

        var slopeInSpeed = (_dragScale * _reynoldsPerSpeed * dragSlope) + lineSlopeInSpeed;
        inLogSpeed = (-perForce * speed * slopeInSpeed) - (2 * rate);
        inLogDepth = rate + (perForce * depth * (_line.NewtonsPerMetre - lineSlopeInDepth));
        return rate;
    }

    /// <summary>(eˣ − 1)/x and (eˣ − 1 − x)/x², by their series where the differences would lose digits.</summary>
    private static (double Phi1, double Phi2) ExponentialWeights(double x)
    {
        if (Math.Abs(x) < 0.02)
        {
            var phi2 = 0.5 + (x * ((1.0 / 6) + (x * ((1.0 / 24) + (x / 120)))));
            return (1 + (x * phi2), phi2);
        }

        var phi1 = (Math.Exp(x) - 1) / x;
        return (phi1, (phi1 - 1) / x);
    }
}
