using UnitsNet;

namespace CrewBot.Core.Weather;

/// <summary>The warmest and the coldest air of one day.</summary>
/// <param name="Most">The daily maximum.</param>
/// <param name="Least">The daily minimum.</param>
public readonly record struct DayTemperatures(Temperature Most, Temperature Least)
{
    /// <summary>Degrees Celsius half way between the two.</summary>
    internal double Mean => (Most.DegreesCelsius + Least.DegreesCelsius) / 2;
}
