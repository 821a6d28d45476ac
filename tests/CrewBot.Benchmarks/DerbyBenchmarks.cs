using BenchmarkDotNet.Attributes;
using CrewBot.Core.Derbies;
using CrewBot.Core.Derbies.Ledger;
using CrewBot.Core.Derbies.Scoring;
using CrewBot.Core.Fish;
using CrewBot.Core.Knowledge;
using UnitsNet.Units;

namespace CrewBot.Benchmarks;

/// <summary>Standings of a derby of 200 anglers with 50 fish each.</summary>
[MemoryDiagnoser, MedianColumn]
public class DerbyBenchmarks
{
    private const int Anglers = 200;
    private const int FishEach = 50;

    private static readonly DateTimeOffset Start = new(2027, 1, 16, 8, 0, 0, TimeSpan.FromHours(-6));
    private static readonly Dictionary<long, DateTimeOffset> NoneVoid = [];

    private readonly RecordSet<Species> _species = TradeKnowledge.BuiltIn.Species;
    private readonly DerbySettings _settings = new()
    {
        Window = new DerbyWindow(Start, Start.AddHours(7), TimeSpan.FromMinutes(15)),
        Grid = new MeasuringGrid(ExactLength.From(0.25m, LengthUnit.Inch)),
        Scoring = ScoringRule.BestTotal(3),
        Evidence = Evidence.OwnWord,
        Ties = [TieBreak.NextBest, TieBreak.Earliest],
    };

    private readonly LedgerEvent[] _ledger;
    private readonly Scoreboard _board;
    private int _number;

    public DerbyBenchmarks()
    {
        var random = new Random(20270116);
        _ledger = [.. Enumerable.Range(1, Anglers * FishEach).Select(number => Fish(number, number, random.Next(300, 800)))];
        _board = new Scoreboard(_settings, _species);
        Array.ForEach(_ledger, _board.Apply);
        _board.Standings();
        _number = _ledger.Length;
    }

    /// <summary>One event on a live board, and the standings after it.</summary>
    [Benchmark]
    public Standings Update()
    {
        _number++;
        _board.Apply(new Amended(_number, Start, 1, (_number % _ledger.Length) + 1, ExactLength.From(300 + (_number % 500), LengthUnit.Millimeter)));
        return _board.Standings();
    }

    /// <summary>The standings from a record of 10,000 events.</summary>
    [Benchmark]
    public Standings Recompute() => Standings.Of(_settings, _ledger, NoneVoid, _species, DateTimeOffset.MaxValue);

    private static Entered Fish(int number, int entry, int millimetres) => new(number, Start, 1, entry, entry % Anglers)
    {
        Catch = entry,
        Species = entry % 3 == 0 ? "walleye" : "yellow-perch",
        Measured = ExactLength.From(millimetres, LengthUnit.Millimeter),
        CaughtAt = Start.AddSeconds(entry),
    };
}
