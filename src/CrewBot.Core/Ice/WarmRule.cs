namespace CrewBot.Core.Ice;

/// <summary>What warm air does to a required thickness.</summary>
/// <remarks>
/// Minnesota DNR, as reported on 24 December 2013: above freezing for 6 of the last 24 hours, double the minimum; for 24 hours
/// or more, stay off.
/// </remarks>
public static class WarmRule
{
    private static readonly TimeSpan Doubling = TimeSpan.FromHours(6);
    private static readonly TimeSpan StayOff = TimeSpan.FromHours(24);

    /// <summary>By what to multiply the minimum; null to stay off.</summary>
    /// <param name="aboveFreezing">Hours of the last 24 at or above freezing.</param>
    public static int? FactorFor(TimeSpan aboveFreezing) =>
        aboveFreezing >= StayOff ? null : aboveFreezing >= Doubling ? 2 : 1;
}
