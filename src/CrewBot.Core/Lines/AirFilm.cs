using UnitsNet;

namespace CrewBot.Core.Lines;

/// <summary>Properties of the air that cools a wet line.</summary>
/// <param name="Viscosity">Kinematic viscosity; about 12.4 mm²/s at −10 °C.</param>
/// <param name="Conductivity">Thermal conductivity; about 0.0236 W/(m·K) at −10 °C.</param>
/// <param name="Prandtl">Prandtl number; 0.71 for air.</param>
public sealed record AirFilm(KinematicViscosity Viscosity, ThermalConductivity Conductivity, double Prandtl)
{
    /// <summary>Air near −10 °C at sea level, handbook values, good to a few per cent from −20 to 0 °C.</summary>
    public static AirFilm NearMinusTen { get; } = new(
        KinematicViscosity.FromSquareMetersPerSecond(1.24e-5),
        ThermalConductivity.FromWattsPerMeterKelvin(0.0236),
        Prandtl: 0.71);
}
