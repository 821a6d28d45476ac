using BenchmarkDotNet.Attributes;
using CrewBot.Core.Water;
using UnitsNet;

namespace CrewBot.Benchmarks;

/// <summary>The two integrations that a plan leans on, at 30 ft on 6-lb braid.</summary>
[MemoryDiagnoser, MedianColumn]
public class WaterBenchmarks
{
    private readonly SinkingBody _jig = new(Mass.FromOunces(1.0 / 8), Density.FromKilogramsPerCubicMeter(11340), 0.5);
    private readonly LineInWater _braid = new(Length.FromInches(0.005), Density.FromKilogramsPerCubicMeter(970));
    private readonly Length _depth = Length.FromFeet(30);
    private readonly Speed _current = Speed.FromMetersPerSecond(0.05);
    private readonly Temperature _water = Temperature.FromDegreesCelsius(4);

    [Benchmark]
    public DropResult? DropTo() => Drop.To(_depth, _jig, _braid, _water);

    [Benchmark]
    public Blowback? BlowbackAtDepth() => Blowback.AtDepth(_depth, _jig, _braid, _current, _water);
}
