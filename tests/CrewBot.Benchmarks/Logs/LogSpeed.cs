using System.Diagnostics;
using CrewBot.Chat.Commands;

namespace CrewBot.Benchmarks.Logs;

/// <summary>
/// Logging beside bare transactions, in turn, round by round: what shares the machine slows both alike, so that the ratio of the
/// medians says more than a job for each.
/// </summary>
internal static class LogSpeed
{
    private const int Rounds = 40;
    private const int OfARound = 50;

    public static async Task LoopAsync(string what, int times)
    {
        await using var log = new LogWriteBenchmarks();
        await log.OpenAsync();
        for (var i = 0; i < 200; i++) { await log.LogOne(); log.BareTransaction(); }
        Console.WriteLine("LOOP");
        File.Exists("/tmp/loop-marker");
        var start = Stopwatch.GetTimestamp();
        var cpu = Environment.CpuUsage.TotalTime;
        for (var i = 0; i < times; i++)
        {
            if (what == "one") await log.LogOne();
            else if (what == "bare") log.BareTransaction();
            else await log.LogManyAtOnce();
        }
        Console.WriteLine($"{what}: {Stopwatch.GetElapsedTime(start).TotalMicroseconds / times:0} us wall, {(Environment.CpuUsage.TotalTime - cpu).TotalMicroseconds / times:0} us cpu");
        File.Exists("/tmp/loop-marker");
    }

    public static async Task RunAsync()
    {
        await using var log = new LogWriteBenchmarks();
        await log.OpenAsync();
        await MeasureAsync(log, 3, print: false);
        await MeasureAsync(log, Rounds, print: true);
    }

    private static async Task MeasureAsync(LogWriteBenchmarks log, int rounds, bool print)
    {
        List<double> bare = [], one = [], many = [];
        for (var round = 0; round < rounds; round++)
        {
            for (var number = 0; number < OfARound; number++)
            {
                var start = Stopwatch.GetTimestamp();
                log.BareTransaction();
                bare.Add(Stopwatch.GetElapsedTime(start).TotalMicroseconds);
            }

            for (var number = 0; number < OfARound; number++)
            {
                var start = Stopwatch.GetTimestamp();
                await log.LogOne();
                one.Add(Stopwatch.GetElapsedTime(start).TotalMicroseconds);
            }

            for (var number = 0; number < 4; number++)
            {
                var start = Stopwatch.GetTimestamp();
                await log.LogManyAtOnce();
                many.Add(Stopwatch.GetElapsedTime(start).TotalMicroseconds / LogWriteBenchmarks.AtOnce);
            }
        }

        if (print)
        {
            Console.WriteLine($"bare {Middle(bare):0} us ({Low(bare):0}), one {Middle(one):0} us ({Low(one):0}) = {Middle(one) / Middle(bare):0.00} x, of many {Middle(many):0} us ({Low(many):0}) = {Middle(bare) / Middle(many):0.00} x the throughput");
        }
    }

    private static double Middle(List<double> all) => all.Order().ElementAt(all.Count / 2);

    private static double Low(List<double> all) => all.Order().ElementAt(all.Count / 10);
}
