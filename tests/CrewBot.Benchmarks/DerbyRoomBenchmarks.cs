using BenchmarkDotNet.Attributes;
using CrewBot.Chat.Commands;
using CrewBot.Core.Derbies.Ledger;
using CrewBot.Core.Fish;
using CrewBot.Storage.Catches;
using CrewBot.Storage.Connections;
using CrewBot.Storage.Crews;
using CrewBot.Storage.Derbies;
using UnitsNet.Units;

namespace CrewBot.Benchmarks;

/// <summary>The derby commands themselves, with 200 anglers who have entered 50 fish each.</summary>
[MemoryDiagnoser, MedianColumn]
public class DerbyRoomBenchmarks() : CrewBenchmarks(Start)
{
    private const int Anglers = 200;
    private const int FishEach = 50;

    private static readonly DateTimeOffset Start = new(2027, 1, 16, 14, 0, 0, TimeSpan.Zero);

    private int _amended;

    [GlobalSetup]
    public async Task SetUpAsync()
    {
        await AskAsync("/derby create name:\"Basin day\" starts:14:00 ends:23:00 evidence:\"own word\"");
        await AskAsync("/derby join");
        await using var database = await Database.OpenAsync(File, CancellationToken.None);
        await database.WriteAsync(Crew, FillAsync, CancellationToken.None);
    }

    [Benchmark]
    public Task<Reply> Standings() => AskAsync("/derby standings");

    /// <summary>A change written to the disk, and all that the derby says unasked brought in line with it.</summary>
    [Benchmark]
    public Task<Reply> Amend()
    {
        _amended++;
        return AskAsync($"/derby amend entry:{1 + (_amended % (Anglers * FishEach))} length:{20 + (_amended / (Anglers * FishEach))}.5cm reason:misread");
    }

    [Benchmark]
    public Task<Reply> Why() => AskAsync("/derby why");

    private Task<Reply> AskAsync(string line) => Desk.AnswerAsync(Desk.Call(line, "angler-0", Role.Steward) with { At = Start.AddHours(4), Place = "scales" });

    private static async Task FillAsync(CrewSession session)
    {
        var (members, catches, ledger) = (new MemberRepository(session), new CatchRepository(session), new LedgerRepository(session));
        var random = new Random(20270116);
        for (var angler = 0; angler < Anglers; angler++)
        {
            var id = (await members.FindOrAddAsync($"angler-{angler}", $"Angler {angler}")).Id;
            if (angler > 0)
            {
                await ledger.AppendAsync(1, at => new Joined(at, Start, id, id, null));
            }

            for (var fish = 0; fish < FishEach; fish++)
            {
                var length = ExactLength.From(random.Next(300, 800), LengthUnit.Millimeter);
                var caught = Start.AddMinutes(random.Next(200));
                var number = await catches.AddAsync(new CatchEntry { MemberId = id, Species = "walleye", CaughtAt = caught, LoggedAt = caught, Length = length });
                await ledger.EnterAsync(
                    1, (at, place) => new Entered(at, caught, id, place, id) { Catch = number, Species = "walleye", Measured = length, CaughtAt = caught }, photoHash: null);
            }
        }
    }
}
