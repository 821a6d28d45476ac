using UnitsNet;

namespace CrewBot.Core.Weather;

/// <summary>How soon bare skin freezes by a range of the wind chill index.</summary>
/// <param name="Soonest">The short end; null where the risk is low.</param>
/// <param name="Latest">The long end; null where the risk is low.</param>
/// <remarks>Environment Canada (2001), hazard table; faster in sustained wind above 50 km/h.</remarks>
public sealed record FrostbiteBand(Duration? Soonest, Duration? Latest)
{
    public static FrostbiteBand Low { get; } = new(null, null);

    /// <summary>The band of a printed index.</summary>
    public static FrostbiteBand Of(int index) => index switch
    {
        <= -55 => Minutes(0, 2),
        <= -48 => Minutes(2, 5),
        <= -40 => Minutes(5, 10),
        <= -28 => Minutes(10, 30),
        _ => Low,
    };

    private static FrostbiteBand Minutes(double soonest, double latest) =>
        new(Duration.FromMinutes(soonest), Duration.FromMinutes(latest));
}
