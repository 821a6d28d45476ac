using BenchmarkDotNet.Attributes;

namespace CrewBot.Benchmarks;

/// <summary>Benchmarks of commands over a file of one crew, which is gone afterwards.</summary>
public abstract class CrewBenchmarks : IAsyncDisposable
{
    protected const string Crew = "tamarack";

    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("crewbot-");

    protected CrewBenchmarks(DateTimeOffset now) => Desk = new CrewDesk(File, Crew, now);

    /// <summary>Where the commands are asked.</summary>
    protected CrewDesk Desk { get; }

    /// <summary>The database.</summary>
    protected string File => Path.Combine(_folder.FullName, "crew.db");

    [GlobalCleanup]
    public async ValueTask DisposeAsync()
    {
        await Desk.DisposeAsync();
        _folder.Delete(recursive: true);
        GC.SuppressFinalize(this);
    }
}
