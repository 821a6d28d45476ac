using BenchmarkDotNet.Attributes;
using CrewBot.Core.Tests.Trips;
using CrewBot.Core.Trips.Seating;

namespace CrewBot.Benchmarks;

/// <summary>Seating invented trips: 24 people in 10 shelters, 60 in 25. The slowest of thirty counts, not the mean.</summary>
[MemoryDiagnoser, MaxColumn]
public class TripBenchmarks
{
    private const int Trips = 30;

    private SeatingAsk[] _club = [];
    private SeatingAsk[] _crowd = [];
    private int _next;

    [GlobalSetup]
    public void Prepare()
    {
        _club = [.. Enumerable.Range(0, Trips).Select(seed => SeatingCases.Random(seed, people: 24, shelters: 10, wishes: 8, mostSeats: 6))];
        _crowd = [.. Enumerable.Range(0, Trips).Select(seed => SeatingCases.Random(seed, people: 60, shelters: 25, wishes: 20, mostSeats: 6))];
    }

    [Benchmark, InvocationCount(1)]
    public SeatingOutcome Club() => SeatingPlanner.Seat(_club[_next++ % Trips]);

    [Benchmark, InvocationCount(1)]
    public SeatingOutcome Crowd() => SeatingPlanner.Seat(_crowd[_next++ % Trips]);
}
