using System.Diagnostics;
using CrewBot.Discord.StandIn;

namespace CrewBot.Discord.Measurements;

/// <summary>Runs the program and the echo in turn and prints a line for each figure.</summary>
internal static class Measurement
{
    private static readonly CancellationToken Never = CancellationToken.None;

    public static async Task<int> RunAsync(int rounds, int memoryInteractions)
    {
        for (var round = 1; round <= rounds; round++)
        {
            await MeasureAsync($"echo {round}", "echo/CrewBot.Discord.Echo", memoryInteractions / 10);
            await MeasureAsync($"crewbot {round}", "worker/CrewBot.Worker", round == rounds ? memoryInteractions : memoryInteractions / 10);
        }

        return 0;
    }

    private static async Task MeasureAsync(string name, string program, int memoryInteractions)
    {
        void Print(FormattableString line) => Console.WriteLine($"{name,-10} {FormattableString.Invariant(line)}");

        await using var bot = await Bot.StartAsync(program);
        bot.Socket = await bot.Server.NextActiveAsync(Never);
        bot.Server.Settings.Records = false;
        var load = new Load(bot);
        await load.SendAsync();
        Print($"process start to first answer {bot.SinceStart.Elapsed.TotalMilliseconds:0} ms");

        await load.InFlightAsync(32, 6_400); // warm-up: what has run often is compiled again
        await load.PacedAsync(300, 1_500);
        load.TakeTimes();
        var before = bot.Processor;
        await load.PacedAsync(300, 3_000);
        var (median, worst) = load.TakeTimes();
        Print($"300 a second: p50 {median:0.00} ms, p99 {worst:0.00} ms, {(bot.Processor - before).TotalSeconds / 3:0.00} s of processor a 1,000");

        before = bot.Processor;
        var watch = Stopwatch.StartNew();
        await load.InFlightAsync(32, 32_000);
        Print($"32 in flight: {32_000 / watch.Elapsed.TotalSeconds:0} a second, {(bot.Processor - before).TotalSeconds / 32:0.00} s of processor a 1,000");

        for (var quarter = 0; quarter < 4; quarter++)
        {
            await load.InFlightAsync(32, memoryInteractions / 4);
            Print($"resident after {load.Accepted:0} answers: {bot.ResidentMegabytes:0.0} MB");
        }

        before = bot.Processor;
        await Task.Delay(TimeSpan.FromSeconds(20));
        Print($"idle: {(bot.Processor - before).TotalMilliseconds / 20:0.00} ms of processor a second");

        await MeasureFaultsAsync(bot, load, Print);
    }

    private static async Task MeasureFaultsAsync(Bot bot, Load load, Action<FormattableString> print)
    {
        var accepted = load.Accepted;
        for (var number = 0; number < 100; number++)
        {
            await load.SendAsync(copies: 2);
        }

        await Task.Delay(TimeSpan.FromSeconds(1));
        print($"100 delivered twice: {load.Accepted - accepted} answered");

        var calls = 0;
        bot.Server.Faults.Otherwise = (_, path) =>
            path.EndsWith("/callback", StringComparison.Ordinal) && Interlocked.Increment(ref calls) % 10 == 0
                ? (calls / 10 % 3) switch { 0 => CannedReply.Limited(0.3), 1 => new CannedReply(500), _ => new CannedReply(503) }
                : null;
        print($"a tenth of 800 callbacks fail: {await load.PacedAsync(100, 800)} missed");
        bot.Server.Faults.Otherwise = static (_, _) => null;

        var watch = Stopwatch.StartNew();
        bot.Socket.Cut();
        bot.Socket = await bot.Server.NextActiveAsync(Never);
        print($"socket cut: back after {watch.Elapsed.TotalMilliseconds:0} ms");
    }
}
