using UnitsNet;

namespace CrewBot.Core.Weather;

/// <summary>What a heated shelter loses. Good to ±50 %: wind raises both losses and no figure for tents was found.</summary>
public static class ShelterHeat
{
    // Volumetric heat of air, W·h/(m³·K).
    private const double AirHeat = 0.33;

    /// <summary>A single thin film or fabric, by analogy with greenhouse tables: 1.2 BTU/h·ft²·°F.</summary>
    public static HeatTransferCoefficient SingleFabric { get; } = HeatTransferCoefficient.FromWattsPerSquareMeterCelsius(6.8);

    /// <summary>A double film, by the same analogy: 0.7 BTU/h·ft²·°F.</summary>
    public static HeatTransferCoefficient DoubleFabric { get; } = HeatTransferCoefficient.FromWattsPerSquareMeterCelsius(3.9);

    /// <summary>Through the walls: Q = U A ΔT.</summary>
    /// <param name="fabric">U, above 0.</param>
    /// <param name="walls">Walls and roof, above 0.</param>
    /// <param name="warmer">What the inside is warmer, from 0 to 100 °C.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument lies outside its range.</exception>
    public static Power ThroughFabric(HeatTransferCoefficient fabric, Area walls, TemperatureDelta warmer) => Power.FromWatts(
        ValidRange.Positive(fabric.WattsPerSquareMeterCelsius, "W/m²·K", nameof(fabric))
        * ValidRange.Positive(walls.SquareMeters, "m²", nameof(walls))
        * ValidRange.Closed(warmer.DegreesCelsius, 0, 100, "°C", nameof(warmer)));

    /// <summary>With the air that comes and goes: Q = 0.33 n V ΔT. A wind-blown fabric shelter has n of 5 to 10 an hour or more.</summary>
    /// <param name="changes">How often the air is changed, 0 or more.</param>
    /// <param name="room">Volume inside, above 0.</param>
    /// <param name="warmer">What the inside is warmer, from 0 to 100 °C.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument lies outside its range.</exception>
    public static Power WithAir(Frequency changes, Volume room, TemperatureDelta warmer) => Power.FromWatts(
        AirHeat
        * ValidRange.NotNegative(changes.CyclesPerHour, "per hour", nameof(changes))
        * ValidRange.Positive(room.CubicMeters, "m³", nameof(room))
        * ValidRange.Closed(warmer.DegreesCelsius, 0, 100, "°C", nameof(warmer)));
}
