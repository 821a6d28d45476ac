namespace CrewBot.Core.Tests.Water;

/// <summary>
/// The full IAPWS R12-08 viscosity without its critical enhancement, as an independent check on the short equation.
/// Coefficients from memory; the formulation's own check point, tested, would show a slip in any that matters here.
/// </summary>
internal static class IapwsViscosity
{
    private static readonly double[] Dilute = [1.67752, 2.20462, 0.6366564, -0.241605];

    private static readonly (int I, int J, double H)[] Residual =
    [
        (0, 0, 5.20094e-1), (1, 0, 8.50895e-2), (2, 0, -1.08374), (3, 0, -2.89555e-1),
        (0, 1, 2.22531e-1), (1, 1, 9.99115e-1), (2, 1, 1.88797), (3, 1, 1.26613), (5, 1, 1.20573e-1),
        (0, 2, -2.81378e-1), (1, 2, -9.06851e-1), (2, 2, -7.72479e-1), (3, 2, -4.89837e-1), (4, 2, -2.57040e-1),
        (0, 3, 1.61913e-1), (1, 3, 2.57399e-1), (0, 4, -3.25372e-2), (3, 4, 6.98452e-2),
        (4, 5, 8.72102e-3), (3, 6, -4.35673e-3), (5, 6, -5.93264e-4),
    ];

    public static double PascalSecondsAt(double kelvin, double density)
    {
        var temperature = kelvin / 647.096;
        var reducedDensity = density / 322.0;
        var dilute = 100 * Math.Sqrt(temperature) / Dilute.Select((h, i) => h / Math.Pow(temperature, i)).Sum();
        var residual = Residual.Sum(term =>
            term.H * Math.Pow((1 / temperature) - 1, term.I) * Math.Pow(reducedDensity - 1, term.J));
        return 1e-6 * dilute * Math.Exp(reducedDensity * residual);
    }
}
