using BenchmarkDotNet.Attributes;
using CrewBot.Chat.Commands;

namespace CrewBot.Benchmarks;

/// <summary>The card of a trip of 14 people who bring 20 things, from the parsed call to the reply.</summary>
[MemoryDiagnoser, MedianColumn]
public class TripCardBenchmarks() : CrewBenchmarks(Eve)
{
    private const int People = 14;

    private static readonly DateTimeOffset Eve = new(2027, 1, 14, 1, 0, 0, TimeSpan.Zero);

    [GlobalSetup]
    public async Task SetUpAsync()
    {
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

    [Benchmark]
    public Task<Reply> Card() => Desk.AnswerAsync(Desk.Call("/trip show", "angler-3") with { At = Eve.AddHours(2) });

    private Task<Reply> AskAsync(string line, int angler) => Desk.AnswerAsync(Desk.Call(line, $"angler-{angler}", Role.Owner));
}
