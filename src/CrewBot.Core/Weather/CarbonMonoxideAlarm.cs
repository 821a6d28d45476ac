using UnitsNet;

namespace CrewBot.Core.Weather;

/// <summary>How long a home carbon monoxide alarm may wait before it sounds: slow by design, so symptoms outrank its silence.</summary>
/// <param name="Concentration">Carbon monoxide in the air.</param>
/// <param name="Soonest">It sounds no sooner.</param>
/// <param name="Latest">It sounds no later.</param>
/// <remarks>UL 2034 response points, from memory.</remarks>
public sealed record CarbonMonoxideAlarm(Ratio Concentration, Duration Soonest, Duration Latest)
{
    public static CarbonMonoxideAlarm Low { get; } =
        new(Ratio.FromPartsPerMillion(70), Duration.FromMinutes(60), Duration.FromMinutes(240));

    public static CarbonMonoxideAlarm High { get; } =
        new(Ratio.FromPartsPerMillion(150), Duration.FromMinutes(10), Duration.FromMinutes(50));
}
