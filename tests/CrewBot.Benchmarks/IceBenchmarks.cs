using BenchmarkDotNet.Attributes;
using CrewBot.Chat.Commands;
using CrewBot.Core.Fish;
using CrewBot.Core.Ice;
using CrewBot.Storage.Connections;
using CrewBot.Storage.Crews;
using CrewBot.Storage.Ice;
using UnitsNet.Units;

namespace CrewBot.Benchmarks;

/// <summary>The board and what a load asks, with 100,000 reports of 90 days in the crew's book, evenly over its waters.</summary>
[MemoryDiagnoser, MedianColumn]
public class IceBenchmarks() : CrewBenchmarks(Now)
{
    private const int Reports = 100_000;
    private const int Spots = 41; // shares no factor with the waters: each water has reports of each spot

    private static readonly DateTimeOffset Now = new(2027, 3, 1, 18, 0, 0, TimeSpan.Zero);

    /// <summary>Over 20 waters one has 55 reports a day, over 2 it has 554: one in less than three minutes, day and night.</summary>
    [Params(2, 20)]
    public int Waters { get; set; }

    [GlobalSetup]
    public async Task SetUpAsync()
    {
        await using var database = await Database.OpenAsync(File, CancellationToken.None);
        await database.WriteAsync(Crew, session => FillAsync(session, Waters), CancellationToken.None);
    }

    [Benchmark]
    public Task<Reply> Board() => AskAsync("/ice board water:\"Loon Basin\"");

    [Benchmark]
    public Task<Reply> Carry() => AskAsync("/ice carry water:\"Loon Basin\" spot:\"spot 7\" people:6 shelter:cabin stay:1h warmest:10F");

    // At one instant, so that every question finds the same reports fresh.
    private Task<Reply> AskAsync(string line) => Desk.AnswerAsync(Desk.Call(line, "ana") with { At = Now });

    private static async Task FillAsync(CrewSession session, int count)
    {
        var member = await new MemberRepository(session).FindOrAddAsync("ana", "Ana");
        var waters = new WaterRepository(session);
        List<long> ids = [await waters.AddAsync("Loon Basin")];
        while (ids.Count < count)
        {
            ids.Add(await waters.AddAsync($"Bay {ids.Count}"));
        }

        var reports = new IceReportRepository(session);
        for (var number = 0; number < Reports; number++)
        {
            var at = Now - TimeSpan.FromMinutes(1.3 * (Reports - number));
            var thickness = IceThickness.Of(ExactLength.From(6 + (number % 12), LengthUnit.Inch));
            var page = new IcePage { Holes = [new IceHole(thickness, null, null, null)], Hazards = number % Spots is 3 or 20 ? [IceHazard.OpenWater] : [] };
            await reports.AddAsync(new IceEntry(member.Id, ids[number % count], at, page) { Spot = $"spot {number % Spots}", MeasuredAt = at });
        }
    }
}
