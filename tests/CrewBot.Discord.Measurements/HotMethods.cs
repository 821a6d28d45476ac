using System.Diagnostics;

namespace CrewBot.Discord.Measurements;

/// <summary>
/// Writes down which methods of the published program run while <c>/rig plan</c> is answered, those that run most first: the order in
/// which the compiler then lays them into the program. Needs <c>perf</c>, which samples call stacks.
/// </summary>
internal static class HotMethods
{
    private const int Seconds = 40;
    private const int SamplesPerSecond = 7_000;
    private const string Program = "CrewBot.Worker";

    public static Task WriteAsync(string path) => Measurement.WithWorkerAsync(async load =>
    {
        var samples = Path.GetTempFileName();
        try
        {
            await load.InFlightAsync(32, 6_400); // warm-up
            var recording = PerfAsync(
                $"record -q -g -F {SamplesPerSecond} -p {load.Bot.ProcessId} -o {samples} -- sleep {Seconds}", static _ => { });
            while (!recording.IsCompleted)
            {
                await load.InFlightAsync(32, 6_400);
                await load.PacedAsync(300, 300);
            }

            await recording;
            await File.WriteAllLinesAsync(path, await NamesAsync(samples));
        }
        finally
        {
            File.Delete(samples);
        }
    });

    // Of each sample's stack, a line "  address name (file)" a frame.
    private static async Task<IEnumerable<string>> NamesAsync(string samples)
    {
        var counts = new Dictionary<string, int>();
        await PerfAsync($"script --no-inline -F ip,sym,dso -i {samples}", line =>
        {
            if (line.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries) is [_, var name, var file] && file.EndsWith($"/{Program})", StringComparison.Ordinal))
            {
                counts[name] = counts.GetValueOrDefault(name) + 1;
            }
        });
        return counts
            .Where(count => !count.Key.Contains(':', StringComparison.Ordinal)) // of the runtime's own, compiled elsewhere
            .OrderByDescending(count => count.Value)
            .ThenBy(count => count.Key, StringComparer.Ordinal)
            .Select(count => count.Key);
    }

    private static async Task PerfAsync(string arguments, Action<string> read)
    {
        using var perf = Process.Start(new ProcessStartInfo("perf", arguments) { RedirectStandardOutput = true })!;
        while (await perf.StandardOutput.ReadLineAsync() is { } line)
        {
            read(line);
        }

        await perf.WaitForExitAsync();
        if (perf.ExitCode != 0)
        {
            throw new InvalidOperationException($"perf {arguments} ended with {perf.ExitCode}.");
        }
    }
}
