using BenchmarkDotNet.Attributes;
using CrewBot.Chat.Commands;

namespace CrewBot.Benchmarks;

/// <summary>The card of a trip of 14 people who bring 20 things, from the parsed call to the reply.</summary>
[MemoryDiagnoser, MedianColumn]
public class TripCardBenchmarks : IAsyncDisposable
{
    private const int People = 14;

    private static readonly DateTimeOffset Eve = new(2027, 1, 14, 1, 0, 0, TimeSpan.Zero);

    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("crewbot-");
    private CrewDesk _desk = null!;

    [GlobalSetup]
    public async Task SetUpAsync()
    {
        _desk = new CrewDesk(Path.Combine(_folder.FullName, "crew.db"), "tamarack", Eve);
        await AskAsync("/crew setup water:\"Loon Basin\"", 0);
        await AskAsync("/trip plan water:\"Loon Basin\" meet:\"2027-01-16 07:00\" return:\"2027-01-16 16:00\"", 0);
        for (var angler = 1; angler < People; angler++)
        {
            await AskAsync("/trip join answer:in", angler);
        }

        for (var angler = 0; angler < People; angler++)
        {
            await AskAsync("/trip bring item:\"ice picks\"", angler);
        }

        for (var angler = 0; angler < 6; angler++)
        {
            await AskAsync("/trip bring item:hub", angler);
        }
    }

    [GlobalCleanup]
    public async ValueTask DisposeAsync()
    {
        await _desk.DisposeAsync();
        _folder.Delete(recursive: true);
        GC.SuppressFinalize(this);
    }

    [Benchmark]
    public Task<Reply> Card() => _desk.AnswerAsync(_desk.Call("/trip show", "angler-3") with { At = Eve.AddHours(2) });

    private Task<Reply> AskAsync(string line, int angler) => _desk.AnswerAsync(_desk.Call(line, $"angler-{angler}", Role.Owner));
}
