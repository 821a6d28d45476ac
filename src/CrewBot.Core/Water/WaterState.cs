namespace CrewBot.Core.Water;

/// <summary>
/// Density in kg/m³ and dynamic viscosity in Pa·s of water at one temperature, read once for a calculation.
/// </summary>
internal readonly record struct WaterState(double Density, double Viscosity)
{
    /// <summary>Kinematic viscosity, m²/s.</summary>
    public double KinematicViscosity => Viscosity / Density;
}
