using BenchmarkDotNet.Attributes;
using CrewBot.Chat.Commands;

namespace CrewBot.Benchmarks.Logs;

/// <summary>Questions of a crew of 5,000 catches in a file of 1,000,000, from the parsed call to the reply, over the whole log.</summary>
[MemoryDiagnoser, MedianColumn]
public class LogQuestionBenchmarks : IAsyncDisposable
{
    private CrewDesk _desk = null!;

    [GlobalSetup]
    public async Task OpenAsync() => _desk = MillionCatches.DeskOver(await MillionCatches.FileAsync());

    [GlobalCleanup]
    public async ValueTask DisposeAsync()
    {
        await _desk.DisposeAsync();
        GC.SuppressFinalize(this);
    }

    [Benchmark]
    public Task<Reply> CatchBest() => AskAsync("/catch best");

    [Benchmark]
    public Task<Reply> CatchList() => AskAsync("/catch list");

    [Benchmark]
    public Task<Reply> CatchLearn() => AskAsync("/catch learn species:walleye span:all");

    /// <summary>Nobody says of which species: the commonest is found first.</summary>
    [Benchmark]
    public Task<Reply> CatchLearnOfAll() => AskAsync("/catch learn span:all");

    /// <summary>What the log says to it is kept for ten minutes, and each question comes two minutes later: one in five reads it.</summary>
    [Benchmark]
    public Task<Reply> RigPlan() => AskAsync("/rig plan species:walleye depth:24ft");

    [Benchmark]
    public Task<Reply> CatchLeadersOfTheSeason() => AskAsync("/catch leaders");

    [Benchmark]
    public Task<Reply> CatchLeadersOfAll() => AskAsync("/catch leaders span:all");

    private Task<Reply> AskAsync(string line) => _desk.AnswerAsync(_desk.Call(line, MillionCatches.AnglerOf(3)));
}
