using System.Globalization;
using System.Reflection;
using System.Text;

namespace CrewBot.EndToEnd.Tests;

/// <summary>Every command through the program itself: what is published may lack what no code names.</summary>
public sealed class EveryCommandTests : IDisposable
{
    private const string Broken = "Something went wrong inside CrewBot";

    private static readonly byte[] PngSignature = [0x89, (byte)'P', (byte)'N', (byte)'G'];

    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("crewbot-every-");

    public void Dispose() => _folder.Delete(recursive: true);

    // Twice, so that what one command makes is there for those that come before it by name.
    [Fact]
    public async Task Room_EveryExampleOfThePageOfCommands_IsAnsweredOrRefused()
    {
        var examples = await ExamplesAsync();
        Assert.InRange(examples.Count, 60, int.MaxValue);
        await RunAsync("crew.db", "", "demo");

        var run = await RunAsync("crew.db", string.Join('\n', [.. examples, .. examples, "/catch export format:json", ""]), "--pictures", _folder.FullName);

        Assert.DoesNotContain(Broken, run.Output + run.Error, StringComparison.Ordinal);
        Assert.DoesNotContain("fail:", run.Error, StringComparison.Ordinal);
        Assert.StartsWith("BEGIN:VCALENDAR", await File.ReadAllTextAsync(OneOf("trip-*.ics"), TestContext.Current.CancellationToken), StringComparison.Ordinal);
        Assert.Equal(PngSignature, (await File.ReadAllBytesAsync(OneOf("*.png"), TestContext.Current.CancellationToken))[..PngSignature.Length]);
        Assert.NotNull(OneOf("catches-*.json"));
        Assert.NotNull(OneOf("derby-*.csv"));
    }

    [Fact]
    public async Task CatchImport_OfAnExport_AddsEveryFish()
    {
        await RunAsync("crew.db", "", "demo");
        await RunAsync("crew.db", "/catch export\n");

        var run = await RunAsync("other.db", string.Create(CultureInfo.InvariantCulture, $"/catch import file:\"{OneOf("catches-*.csv")}\" confirm:yes\n"));

        Assert.Equal((0, ""), (run.ExitCode, run.Error));
        Assert.Matches(@"\AAdded 1\d{3} fish to the log\n", run.Output);
    }

    private static async Task<List<string>> ExamplesAsync()
    {
        var page = typeof(EveryCommandTests).Assembly.GetCustomAttributes<AssemblyMetadataAttribute>().Single(metadata => metadata.Key == "Commands").Value!;
        var lines = await File.ReadAllLinesAsync(page, Encoding.UTF8, TestContext.Current.CancellationToken);
        var examples = lines.Where(line => line.StartsWith("    /", StringComparison.Ordinal)).Select(line => line.Trim());

        // The clock is the computer's: a derby that is over by its afternoon would be refused in the evening.
        return [.. examples.Select(line => line.Replace("starts:08:00 ends:15:00", "ends:\"tomorrow 15:00\"", StringComparison.Ordinal))];
    }

    private string OneOf(string pattern) => _folder.EnumerateFiles(pattern).First().FullName;

    private Task<WorkerRun> RunAsync(string database, string input, params string[] arguments) => Worker.RunAsync(new WorkerCall
    {
        Arguments = [.. arguments, "--files", _folder.FullName],
        Input = input,
        Environment = new Dictionary<string, string> { ["CREWBOT_DATABASE"] = Path.Combine(_folder.FullName, database) },
    });
}
