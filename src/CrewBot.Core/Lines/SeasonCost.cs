using UnitsNet;

namespace CrewBot.Core.Lines;

/// <summary>What a spool of line costs for each season that it serves.</summary>
public static class SeasonCost
{
    /// <summary>Divides the price of the line used by the seasons it lasts.</summary>
    /// <param name="pricePerMetre">Price of a metre in any currency, 0 or more; the answer is in the same.</param>
    /// <param name="used">Line wound on, above 0.</param>
    /// <param name="seasons">Seasons before it is replaced, above 0; half a season is 0.5.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument lies outside its range.</exception>
    public static decimal PerSeason(decimal pricePerMetre, Length used, decimal seasons)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(pricePerMetre);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(seasons);
        ValidRange.Positive(used.Meters, "m", nameof(used));
        return pricePerMetre * (decimal)used.Meters / seasons;
    }
}
