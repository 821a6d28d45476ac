namespace CrewBot.Core.Water;

/// <summary>Line drawn down through the water along its own length behind a sinking lure.</summary>
/// <remarks>
/// Laminar layer on a long thin cylinder, first two terms of the series of Glauert and Lighthill (1955), summed in
/// closed form: F = 2π μ v L [2/β + (2 + 2γ)/β²] with β = ln(4νL/(v a²)), not below 4, and γ Euler's constant.
/// Fishing line falls at radius Reynolds numbers of 20–250, where that layer is stable. Physical uncertainty about 25
/// %. The default value is no line at all.
/// </remarks>
internal readonly struct FallingLine
{
    private const double EulerGamma = 0.5772156649015329;
    private const double SecondTerm = 2 + (2 * EulerGamma);
    private const double LeastBeta = 4;

    private readonly double _viscousScale;
    private readonly double _logLayerScale;

    public FallingLine(LineInWater line, in WaterState water)
    {
        var radius = line.Diameter.Meters / 2;
        _viscousScale = 2 * Math.PI * water.Viscosity;
        _logLayerScale = Math.Log(4 * water.KinematicViscosity / (radius * radius));
        NewtonsPerMetre = line.SubmergedNewtonsPerMetreIn(water.Density);
    }

    /// <summary>Submerged weight, N/m; negative for line that floats.</summary>
    public double NewtonsPerMetre { get; }

    /// <summary>
    /// Drag in N on <paramref name="length"/> m of line at <paramref name="speed"/> m/s, with its two slopes.
    /// </summary>
    public double DragAt(double length, double speed, out double slopeInSpeed, out double slopeInLength) =>
        DragAt(length, speed, Math.Log(length / speed), out slopeInSpeed, out slopeInLength);

    /// <summary>The same where ln(length/speed) is known already.</summary>
    public double DragAt(
        double length, double speed, double logRatio, out double slopeInSpeed, out double slopeInLength)
    {
        if (_viscousScale == 0)
        {
            slopeInSpeed = slopeInLength = 0;
            return 0;
        }

        var beta = _logLayerScale + logRatio;
        var floored = beta < LeastBeta;
        var inverse = 1 / (floored ? LeastBeta : beta);
        var friction = inverse * (2 + (SecondTerm * inverse));
        var frictionSlope = floored ? 0 : -inverse * inverse * (2 + (2 * SecondTerm * inverse)); // against β

        slopeInSpeed = _viscousScale * length * (friction - frictionSlope);
        slopeInLength = _viscousScale * speed * (friction + frictionSlope);
        return _viscousScale * speed * length * friction;
    }
}
