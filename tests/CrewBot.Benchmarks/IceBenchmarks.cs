using BenchmarkDotNet.Attributes;
using CrewBot.Chat;
using CrewBot.Chat.Commands;
using CrewBot.Core.Fish;
using CrewBot.Core.Ice;
using CrewBot.Core.Knowledge;
using CrewBot.Storage.Connections;
using CrewBot.Storage.Crews;
using CrewBot.Storage.Ice;
using Microsoft.Extensions.DependencyInjection;
using UnitsNet.Units;

namespace CrewBot.Benchmarks;

/// <summary>The board and what a load asks, with 100,000 reports of a season in the crew's book, half of them of one water.</summary>
[MemoryDiagnoser, MedianColumn]
public class IceBenchmarks
{
    private const int Reports = 100_000;
    private const int Spots = 40;

    private static readonly DateTimeOffset Now = new(2027, 3, 1, 18, 0, 0, TimeSpan.Zero);

    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("crewbot-");
    private CrewBook _book = CrewBook.None;
    private ServiceProvider? _services;
    private int _number;

    [GlobalSetup]
    public async Task SetUpAsync()
    {
        var path = Path.Combine(_folder.FullName, "crew.db");
        await using (var database = await Database.OpenAsync(path, CancellationToken.None))
        {
            await database.WriteAsync("tamarack", FillAsync, CancellationToken.None);
        }

        _book = CrewBook.At(path);
        _services = new ServiceCollection().AddLogging().AddChat(TradeKnowledge.BuiltIn, _book).BuildServiceProvider();
    }

    [GlobalCleanup]
    public async Task CleanUpAsync()
    {
        await _services!.DisposeAsync();
        await _book.DisposeAsync();
        _folder.Delete(recursive: true);
    }

    [Benchmark]
    public Task<Reply> Board() => AskAsync("ice board", new() { ["water"] = "Loon Basin" });

    [Benchmark]
    public Task<Reply> Carry() => AskAsync(
        "ice carry", new() { ["water"] = "Loon Basin", ["spot"] = "spot 7", ["people"] = "6", ["shelter"] = "cabin", ["stay"] = "1h", ["warmest"] = "10F" });

    private Task<Reply> AskAsync(string path, Dictionary<string, string> options) => _services!.GetRequiredService<Dispatcher>().AnswerAsync(
        new CommandCall($"{++_number}", Now, new Caller("tamarack", "ana", Role.Member, CrewUnits.Customary), path, options), CancellationToken.None);

    private static async Task FillAsync(CrewSession session)
    {
        var member = await new MemberRepository(session).FindOrAddAsync("ana", "Ana");
        var waters = new WaterRepository(session);
        long[] ids = [await waters.AddAsync("Loon Basin"), await waters.AddAsync("Tamarack Bay")];
        var reports = new IceReportRepository(session);
        for (var number = 0; number < Reports; number++)
        {
            var at = Now - TimeSpan.FromMinutes(1.3 * (Reports - number));
            var thickness = IceThickness.Of(ExactLength.From(6 + (number % 12), LengthUnit.Inch));
            var page = new IcePage { Holes = [new IceHole(thickness, null, null, null)], Hazards = number % 50 == 0 ? [IceHazard.OpenWater] : [] };
            await reports.AddAsync(new IceEntry(member.Id, ids[number % 2], at, page) { Spot = $"spot {number % Spots}", MeasuredAt = at });
        }
    }
}
