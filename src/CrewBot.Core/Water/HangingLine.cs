namespace CrewBot.Core.Water;

/// <summary>
/// Line held at its top in a uniform current, followed upward from the lure. All quantities are SI doubles.
/// </summary>
internal readonly struct HangingLine
{
    private const double AlongLineCoefficient = 0.02; // smooth line, 0.01–0.03; it hardly matters at common angles
    private const int Steps = 64;

    private readonly double _weight;
    private readonly double _crossDrag;
    private readonly double _alongDrag;

    public HangingLine(double diameter, double weightPerMetre, double current, in WaterState water)
    {
        var pressure = water.Density / 2 * current * current;
        _weight = weightPerMetre;
        _crossDrag = CylinderDrag.CoefficientAt(current * diameter / water.KinematicViscosity) * pressure * diameter;
        _alongDrag = AlongLineCoefficient * pressure * Math.PI * diameter;
    }

    /// <summary>One point of the line: the tension's two parts there, and the way from the lure to it.</summary>
    internal readonly record struct Point(double Across, double Up, double Offset, double Rise, double LineOut)
    {
        public double Cosine => Up / Math.Sqrt((Across * Across) + (Up * Up));

        public Point Plus(double step, in Point rate) => new(
            Across + (step * rate.Across),
            Up + (step * rate.Up),
            Offset + (step * rate.Offset),
            Rise + (step * rate.Rise),
            LineOut + (step * rate.LineOut));
    }

    /// <summary>
    /// Follows the line for <paramref name="span"/> metres of its length, or of depth, from a lure that pulls
    /// <paramref name="across"/> and <paramref name="down"/> newtons; null when its lean passes the least cosine.
    /// </summary>
    /// <remarks>
    /// Steps grow as the hyperbolic sine of an even grid, on the scale of lure pull over line drag: for weightless line
    /// the tangent of the lean grows in proportion to the length, so equal steps of the grid are about equal steps of
    /// depth.
    /// </remarks>
    public Point? Climb(double across, double down, double span, bool byDepth, double leastCosine)
    {
        var scale = Math.Sqrt((across * across) + (down * down)) / _crossDrag;
        var end = Math.Asinh(span / scale);
        var point = new Point(across, down, 0, 0, 0);
        var reached = 0.0;

        for (var i = 1; i <= Steps; i++)
        {
            var next = i == Steps ? span : scale * Math.Sinh(end * i / Steps);
            point = Step(point, next - reached, byDepth);
            if (!(point.Cosine > leastCosine)) // not-a-number, from a step past the horizontal, stops here too
            {
                return null;
            }

            reached = next;
        }

        return point;
    }

    private Point Step(in Point from, double step, bool byDepth)
    {
        var first = Rate(from, byDepth);
        var second = Rate(from.Plus(step / 2, first), byDepth);
        var third = Rate(from.Plus(step / 2, second), byDepth);
        var fourth = Rate(from.Plus(step, third), byDepth);
        return from
            .Plus(step / 6, first)
            .Plus(step / 3, second)
            .Plus(step / 3, third)
            .Plus(step / 6, fourth);
    }

    /// <summary>Change per metre of line or of depth, forces resolved across and up.</summary>
    private Point Rate(in Point at, bool byDepth)
    {
        var inverse = 1 / Math.Sqrt((at.Across * at.Across) + (at.Up * at.Up));
        var (sine, cosine) = (at.Across * inverse, at.Up * inverse);
        var cross = _crossDrag * cosine * Math.Abs(cosine);
        var along = _alongDrag * sine * sine;
        var perMetre = byDepth ? 1 / cosine : 1;
        return new Point(
            perMetre * ((along * sine) + (cross * cosine)),
            perMetre * (_weight + (along * cosine) - (cross * sine)),
            perMetre * sine,
            perMetre * cosine,
            perMetre);
    }
}
