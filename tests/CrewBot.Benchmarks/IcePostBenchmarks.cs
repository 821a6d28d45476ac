using BenchmarkDotNet.Attributes;
using CrewBot.Core.Ice.Posts;

namespace CrewBot.Benchmarks;

/// <summary>Reading a post about ice: one as people write them, the longest that the platform lets through, and one of nothing but numbers.</summary>
[MemoryDiagnoser, MedianColumn]
public class IcePostBenchmarks
{
    private readonly string _usual =
        "Walked out from the landing this morning, 4-5 inches of good clear ice off the point, maybe 3 by the narrows and there is slush on top. My buddy says the inlet is still open.";

    private static readonly DateTimeOffset Posted = new(2026, 1, 10, 15, 0, 0, TimeSpan.FromHours(-6));
    private static readonly string[] Waters = ["Loon Basin", "Tamarack Bay"];
    private readonly string _numbers = string.Concat(Enumerable.Repeat("5 in ", 800));
    private string _longest = "";

    [GlobalSetup]
    public void Repeat() => _longest = string.Concat(Enumerable.Repeat(_usual + "\n", 23))[..4000];

    [Benchmark(Baseline = true)]
    public IcePost Usual() => IcePostReader.Read(_usual, Posted, Waters);

    [Benchmark]
    public IcePost Longest() => IcePostReader.Read(_longest, Posted, Waters);

    [Benchmark]
    public IcePost Numbers() => IcePostReader.Read(_numbers, Posted, Waters);
}
