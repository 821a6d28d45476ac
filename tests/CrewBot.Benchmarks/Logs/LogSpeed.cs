using System.Diagnostics;
using System.Globalization;

namespace CrewBot.Benchmarks.Logs;

/// <summary>
/// Logging and bare transactions in turn, round by round: what else uses the machine slows both alike, so that the ratio of their
/// medians can be relied on where a job for each can't.
/// </summary>
internal static class LogSpeed
{
    private const int WarmingRounds = 60;
    private const int Rounds = 120;
    private const int OfARound = 50;

    public static async Task RunAsync()
    {
        var log = new LogWriteBenchmarks();
        await log.OpenAsync();
        await using var _ = log;
        await MeasureAsync(log, WarmingRounds);
        var (bare, one, ofMany) = await MeasureAsync(log, Rounds);
        Console.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"bare {bare:0} us; /catch log {one:0} us, {one / bare:0.00} times a bare one; of {LogWriteBenchmarks.AtOnce} at once {ofMany:0} us each, {bare / ofMany:0.00} times the throughput of bare ones"));
    }

    private static async Task<(double Bare, double One, double OfMany)> MeasureAsync(LogWriteBenchmarks log, int rounds)
    {
        List<double> bare = [], one = [], ofMany = [];
        for (var round = 0; round < rounds; round++)
        {
            for (var number = 0; number < OfARound; number++)
            {
                bare.Add(await TimeAsync(() => Task.FromResult(log.BareTransaction())));
                one.Add(await TimeAsync(log.LogOne));
            }

            ofMany.Add(await TimeAsync(log.LogManyAtOnce) / LogWriteBenchmarks.AtOnce);
        }

        return (Median(bare), Median(one), Median(ofMany));
    }

    private static async Task<double> TimeAsync(Func<Task> act)
    {
        var start = Stopwatch.GetTimestamp();
        await act();
        return Stopwatch.GetElapsedTime(start).TotalMicroseconds;
    }

    private static double Median(List<double> times) => times.Order().ElementAt(times.Count / 2);
}
