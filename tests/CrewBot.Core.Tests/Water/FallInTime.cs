using CrewBot.Core.Water;
using UnitsNet;

namespace CrewBot.Core.Tests.Water;

/// <summary>
/// The same fall worked out another way: position and speed stepped through time by the explicit fourth-order
/// Runge–Kutta method, with steps well below the time in which drag takes hold, and the forces written out from their
/// sources anew.
/// </summary>
internal sealed class FallInTime(SinkingBody body, LineInWater? line, Temperature water)
{
    private readonly double _density = FreshWater.DensityAt(water).KilogramsPerCubicMeter;
    private readonly double _viscosity = FreshWater.ViscosityAt(water).PascalSeconds;

    public (double Seconds, double EndSpeed) To(double depth)
    {
        var (time, z, v) = (0.0, 0.0, 0.0);
        while (true)
        {
            // A twentieth of the time in which drag would stop the acceleration, and small at the start from rest.
            var step = Math.Min(0.05 * RelaxationTime(z, v), (0.05 * time) + 1e-4);
            var (nextZ, nextV) = Step(z, v, step);
            if (nextZ >= depth)
            {
                var share = (depth - z) / (nextZ - z);
                return (time + (share * step), v + (share * (nextV - v)));
            }

            (time, z, v) = (time + step, nextZ, nextV);
        }
    }

    private (double Z, double V) Step(double z, double v, double h)
    {
        var a1 = Acceleration(z, v);
        var v2 = v + (h / 2 * a1);
        var a2 = Acceleration(z + (h / 2 * v), v2);
        var v3 = v + (h / 2 * a2);
        var a3 = Acceleration(z + (h / 2 * v2), v3);
        var v4 = v + (h * a3);
        var a4 = Acceleration(z + (h * v3), v4);
        return (z + (h / 6 * (v + (2 * v2) + (2 * v3) + v4)), v + (h / 6 * (a1 + (2 * a2) + (2 * a3) + a4)));
    }

    private double RelaxationTime(double z, double v)
    {
        var dv = Math.Max(1e-3 * v, 1e-5);
        return dv / Math.Abs(Acceleration(z, v + dv) - Acceleration(z, v));
    }

    private double Acceleration(double z, double v)
    {
        var volume = body.Mass.Kilograms / body.Density.KilogramsPerCubicMeter;
        var diameter = Math.Cbrt(6 * volume / Math.PI);
        var net = (body.Density.KilogramsPerCubicMeter - _density) * volume * 9.80665;
        if (v > 0)
        {
            // A share of the sphere's terminal speed: the sphere's drag, met at that share of the speed.
            var bare = v / body.SpeedShare;
            var reynolds = bare * diameter * _density / _viscosity;
            var coefficient = (24 / reynolds * (1 + (0.152 * Math.Pow(reynolds, 0.677))))
                + (0.417 / (1 + (5070 * Math.Pow(reynolds, -0.94))));
            net -= coefficient * _density / 2 * bare * bare * Math.PI * diameter * diameter / 4;
        }

        if (line is not null && z > 0)
        {
            var radius = line.Diameter.Meters / 2;
            net += (line.Density.KilogramsPerCubicMeter - _density) * Math.PI * radius * radius * 9.80665 * z;
            if (v > 0)
            {
                var beta = Math.Max(4, Math.Log(4 * _viscosity / _density * z / (v * radius * radius)));
                net -= 2 * Math.PI * _viscosity * v * z * ((2 / beta) + ((2 + (2 * 0.57721566)) / (beta * beta)));
            }
        }

        return net / (body.Mass.Kilograms + (0.5 * _density * volume));
    }
}
