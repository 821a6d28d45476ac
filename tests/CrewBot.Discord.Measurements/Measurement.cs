using System.Diagnostics;
using CrewBot.Discord.StandIn;

namespace CrewBot.Discord.Measurements;

/// <summary>Runs the program and the echo in turn and prints a line for each figure.</summary>
internal static class Measurement
{
    private static readonly CancellationToken Never = CancellationToken.None;
    private static readonly MeasuredProgram[] Own = [MeasuredProgram.Echo, MeasuredProgram.CrewBot];

    /// <summary>Every figure.</summary>
    public static Task RunAsync(int rounds, int memoryInteractions) => InTurnAsync(rounds, Own, async (load, print, program, round) =>
    {
        await MeasurePaceAsync(load, print);
        await MeasureMemoryAsync(load, print, program == MeasuredProgram.CrewBot && round == rounds ? memoryInteractions : memoryInteractions / 10);
        await MeasureFaultsAsync(load, print);
    });

    /// <summary>How fast, and for how much of the processor; where a standard client is installed, beside that too.</summary>
    public static Task PaceAsync(int rounds)
    {
        if (!MeasuredProgram.HasLibrary)
        {
            Console.WriteLine("library: left out; npm ci in tests/interop installs it");
        }

        return InTurnAsync(
            rounds, MeasuredProgram.HasLibrary ? [MeasuredProgram.Library, .. Own] : Own, static (load, print, _, _) => MeasurePaceAsync(load, print));
    }

    /// <summary>Gives a program that has answered once, joined to a stand-in and working on the crew's file, to whoever measures it.</summary>
    public static async Task WithWorkerAsync(Func<Load, Task> measure)
    {
        var folder = Directory.CreateTempSubdirectory("crewbot-");
        try
        {
            await MeasureAsync(MeasuredProgram.CrewBot, Path.Combine(folder.FullName, "crew.db"), static _ => { }, measure);
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    private static async Task InTurnAsync(
        int rounds, IReadOnlyList<MeasuredProgram> programs, Func<Load, Action<FormattableString>, MeasuredProgram, int, Task> measure)
    {
        for (var round = 1; round <= rounds; round++)
        {
            foreach (var program in programs)
            {
                var name = $"{program.Name} {round}";
                void Print(FormattableString line) => Console.WriteLine($"{name,-10} {FormattableString.Invariant(line)}");
                var folder = Directory.CreateTempSubdirectory("crewbot-");
                try
                {
                    await MeasureAsync(program, Path.Combine(folder.FullName, "crew.db"), Print, load => measure(load, Print, program, round));
                }
                finally
                {
                    folder.Delete(recursive: true);
                }
            }
        }
    }

    private static async Task MeasureAsync(MeasuredProgram program, string database, Action<FormattableString> print, Func<Load, Task> measure)
    {
        await MeasuredCrew.WriteAsync(database);
        await using var bot = await Bot.StartAsync(program, database);
        bot.Socket = await bot.Server.NextActiveAsync(Never);
        bot.Server.Settings.Records = false;
        var load = new Load(bot);
        await load.SendAsync();
        print($"process start to first answer {bot.SinceStart.Elapsed.TotalMilliseconds:0} ms");
        await measure(load);
    }

    private static async Task MeasurePaceAsync(Load load, Action<FormattableString> print)
    {
        var bot = load.Bot;
        await load.InFlightAsync(32, 6_400); // warm-up
        await load.PacedAsync(300, 1_500);
        load.TakeTimes();
        var before = bot.Processor;
        await load.PacedAsync(300, 3_000);
        var (median, worst) = load.TakeTimes();
        print($"300 a second: p50 {median:0.00} ms, p99 {worst:0.00} ms, {(bot.Processor - before).TotalSeconds / 3:0.00} s of processor a 1,000");

        before = bot.Processor;
        var watch = Stopwatch.StartNew();
        await load.InFlightAsync(32, 32_000);
        print($"32 in flight: {32_000 / watch.Elapsed.TotalSeconds:0} a second, {(bot.Processor - before).TotalSeconds / 32:0.00} s of processor a 1,000");
    }

    private static async Task MeasureMemoryAsync(Load load, Action<FormattableString> print, int interactions)
    {
        var bot = load.Bot;
        for (var quarter = 0; quarter < 4; quarter++)
        {
            await load.InFlightAsync(32, interactions / 4);
            print($"resident after {load.Accepted:0} answers: {bot.ResidentMegabytes:0.0} MB");
        }

        var before = bot.Processor;
        await Task.Delay(TimeSpan.FromSeconds(20));
        print($"idle: {(bot.Processor - before).TotalMilliseconds / 20:0.00} ms of processor a second");
    }

    private static async Task MeasureFaultsAsync(Load load, Action<FormattableString> print)
    {
        var bot = load.Bot;
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
