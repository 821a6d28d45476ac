using BenchmarkDotNet.Attributes;
using CrewBot.Chat.Commands;

namespace CrewBot.Benchmarks.Logs;

/// <summary>Questions of a crew of 5,000 catches in a file of 1,000,000, from the parsed call to the reply, over the whole log.</summary>
[MemoryDiagnoser, MedianColumn]
public class LogQuestionBenchmarks : IAsyncDisposable
{
    private CrewDesk _desk = null!;

    [GlobalSetup]
    public async Task OpenAsync() => _desk = new CrewDesk(await MillionCatches.FileAsync());

    [GlobalCleanup]
    public async ValueTask DisposeAsync()
    {
        await _desk.DisposeAsync();
        GC.SuppressFinalize(this);
    }

    [Benchmark]
    public Task<Reply> CatchBest() => _desk.AnswerAsync(_desk.Call("/catch best"));

    [Benchmark]
    public Task<Reply> CatchList() => _desk.AnswerAsync(_desk.Call("/catch list"));

    [Benchmark]
    public Task<Reply> CatchLearn() => _desk.AnswerAsync(_desk.Call("/catch learn species:walleye span:all"));

    /// <summary>Nobody says of which species: the commonest is found first.</summary>
    [Benchmark]
    public Task<Reply> CatchLearnOfAll() => _desk.AnswerAsync(_desk.Call("/catch learn span:all"));

    [Benchmark]
    public Task<Reply> CatchLeadersOfTheSeason() => _desk.AnswerAsync(_desk.Call("/catch leaders"));

    [Benchmark]
    public Task<Reply> CatchLeadersOfAll() => _desk.AnswerAsync(_desk.Call("/catch leaders span:all"));
}
