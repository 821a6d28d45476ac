using System.Text;
using BenchmarkDotNet.Attributes;
using CrewBot.Core.Knowledge;

namespace CrewBot.Benchmarks;

/// <summary>Reading and checking the whole of the trade's knowledge with a crew's file over it, as a start does once.</summary>
[MemoryDiagnoser, MedianColumn]
public class KnowledgeBenchmarks
{
    private readonly byte[] _overlay = Encoding.UTF8.GetBytes(
        """{ "waters": [{ "key": "loon-basin", "name": "Loon Basin", "lines": 2, "source": "invented" }] }""");

    [Benchmark]
    public KnowledgeReading Load()
    {
        using var stream = new MemoryStream(_overlay);
        return KnowledgeReader.Read("crew.json", stream);
    }
}
