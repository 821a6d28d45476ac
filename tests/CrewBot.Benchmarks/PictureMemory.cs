using System.Diagnostics;
using CrewBot.Drawing;
using CrewBot.Drawing.Inks;

namespace CrewBot.Benchmarks;

/// <summary>Draws ten thousand pictures and tells what the process holds: natives are not seen by a memory diagnoser.</summary>
internal static class PictureMemory
{
    private const int Pictures = 10_000;
    private const int Every = 2_000;

    public static void Run()
    {
        var rig = PictureBenchmarks.Ask("/rig plan species:walleye depth:24ft mood:negative");
        var size = Illustrator.Draw(rig, Theme.Light).Length;
        Console.WriteLine($"A file of {size / 1000.0:0.0} kB.");
        var (before, clock) = (Environment.CpuUsage.TotalTime, Stopwatch.StartNew());
        for (var drawn = 0; drawn <= Pictures; drawn++)
        {
            if (drawn % Every == 0)
            {
                Console.WriteLine($"{drawn,6} pictures: {Environment.WorkingSet / 1_000_000} MB resident, {clock.Elapsed.TotalMilliseconds / Math.Max(1, drawn):0.0} ms each, {(Environment.CpuUsage.TotalTime - before).TotalMilliseconds / Math.Max(1, drawn):0.0} ms of it processor time");
            }

            _ = Illustrator.Draw(rig, drawn % 2 == 0 ? Theme.Light : Theme.Dark);
        }
    }
}
