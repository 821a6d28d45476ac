using UnitsNet;

namespace CrewBot.Core.Trips;

/// <summary>What is forecast for a time of the day.</summary>
/// <param name="Clock">The time, by the local clock.</param>
/// <param name="Air">Air temperature, from -90 to 60 °C.</param>
/// <param name="Wind">Sustained wind 10 m above the ground, from 0 to 60 m/s.</param>
public sealed record ForecastPoint(TimeOnly Clock, Temperature Air, Speed Wind);
