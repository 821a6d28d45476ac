namespace CrewBot.Discord.Gateway;

/// <summary>
/// How long to wait before the next attempt, with full jitter: <c>random</c> runs from 0 to 1. Pure, so that it is tested
/// without waiting.
/// </summary>
internal static class Backoff
{
    private const double LongestConnectSeconds = 60;
    private const double FirstIdentifySeconds = 5;

    // With full jitter a cap of 600 s spends about 288 starts in a day-long outage, far from the 1,000 that are allowed.
    private const double LongestIdentifySeconds = 600;

    /// <summary>Before connecting: nothing at first, then up to 1, 2, 4 ... 60 s.</summary>
    public static TimeSpan Connect(int attempts, double random) =>
        attempts == 0 ? TimeSpan.Zero : Jittered(1, attempts, LongestConnectSeconds, random);

    /// <summary>Before starting another session: nothing at first, then up to 5, 10, 20 ... 600 s.</summary>
    public static TimeSpan Identify(int attempts, double random) =>
        attempts == 0 ? TimeSpan.Zero : Jittered(FirstIdentifySeconds, attempts, LongestIdentifySeconds, random);

    private static TimeSpan Jittered(double first, int attempts, double longest, double random) =>
        TimeSpan.FromSeconds(Math.Min(first * Math.Pow(2, attempts - 1), longest) * random);
}
