using System.Globalization;
using CrewBot.Core.Fish;
using CrewBot.Storage.Catches;
using CrewBot.Storage.Connections;
using CrewBot.Storage.Crews;
using CsCheck;
using UnitsNet.Units;

namespace CrewBot.Chat.Tests.Catches;

/// <summary>The boards against a plain recomputation over the rows that were written.</summary>
public sealed class BoardsTests
{
    private static readonly DateTimeOffset Now = new(2027, 1, 16, 20, 0, 0, TimeSpan.Zero);

    private static readonly string[] People = ["Ana", "Bo", "Cy"];

    // Quarter inches from a few, so that ties are common; times within and before this month and season.
    private static readonly Gen<Fish> AnyFish =
        from species in Gen.OneOf("walleye", "yellow-perch", "northern-pike")
        from angler in Gen.Int[0, 2]
        from quarters in Gen.Int[48, 56].Nullable()
        from ounces in Gen.Int[10, 14].Nullable()
        from hoursAgo in Gen.OneOf(Gen.Int[0, 23], Gen.Int[25, 300], Gen.Int[400, 4000], Gen.Int[6000, 20000])
        from isVoid in Gen.Int[0, 6]
        from water in Gen.Int[0, 1]
        select new Fish(species, angler, quarters, ounces, hoursAgo, isVoid == 0, water == 0);

    [Fact]
    public Task Leaders_AnyLog_EqualAPlainCount() => AnyFish.Array[1, 25].SampleAsync(
        async fish =>
        {
            await using var room = new CrewRoom { Now = Now };
            await room.WriteAsync(session => WriteAsync(session, fish));
            await CompareAsync(room, "span:all", fish, _ => true);
            await CompareAsync(room, "span:day", fish, one => one.HoursAgo <= 24);
            await CompareAsync(room, "span:month", fish, one => Now.AddHours(-one.HoursAgo) >= new DateTimeOffset(2027, 1, 1, 0, 0, 0, TimeSpan.Zero));
            await CompareAsync(room, "", fish, one => Now.AddHours(-one.HoursAgo) >= new DateTimeOffset(2026, 7, 1, 0, 0, 0, TimeSpan.Zero));
            await CompareAsync(room, "span:all water:\"Loon Basin\"", fish, one => one.IsInBasin);
        },
        iter: 25,
        threads: 2);

    [Fact]
    public async Task Leaders_TotalOfManyMetres_IsInMetres()
    {
        await using var room = new CrewRoom { Now = Now };
        await room.WriteAsync(session => WriteAsync(session, [.. Enumerable.Repeat(new Fish("walleye", 0, 160, null, 1, false, true), 10)]));

        Assert.Contains("Best total (all measured lengths together): 400 in (10.2 m), Ana.", (await room.SayAsync("catch leaders")).Lines);
    }

    [Fact]
    public async Task Leaders_OfADay_AreOfTheLast24Hours()
    {
        await using var room = new CrewRoom { Now = Now };
        await room.SayAsync("log walleye 20in");
        room.Now += TimeSpan.FromHours(23);

        Assert.Equal("Leaders, the last 24 hours: 1 fish", (await room.SayAsync("catch leaders day")).Headline);
        room.Now += TimeSpan.FromHours(2);
        Assert.Equal("No fish in the log for the last 24 hours.", (await room.SayAsync("catch leaders day")).Problem);
    }

    private static async Task CompareAsync(CrewRoom room, string options, Fish[] fish, Func<Fish, bool> counts)
    {
        var reply = await room.SayAsync($"catch leaders {options}");
        var counted = fish.Select((one, at) => (one, number: at + 1)).Where(pair => !pair.one.IsVoid && counts(pair.one)).ToList();
        if (counted.Count == 0)
        {
            Assert.NotNull(reply.Problem);
            return;
        }

        var expected = new List<string>();
        foreach (var (species, name) in new[] { ("walleye", "walleye"), ("yellow-perch", "yellow perch"), ("northern-pike", "northern pike") })
        {
            var measured = counted.Where(pair => pair.one.Species == species && pair.one.Quarters is not null).ToList();
            if (measured.Count > 0)
            {
                var longest = measured.Max(pair => pair.one.Quarters!.Value);
                expected.Add($"Longest {name}: {Inches(longest)}, {Names(measured.Where(pair => pair.one.Quarters == longest).OrderByDescending(pair => pair.one.HoursAgo).DistinctBy(pair => pair.one.Angler).Select(pair => $"{People[pair.one.Angler]} (#{pair.number})"))}.");
            }
        }

        var kinds = People.Select((who, at) => (who, count: counted.Where(pair => pair.one.Angler == at).Select(pair => pair.one.Species).Distinct().Count())).ToList();
        expected.Add($"Most species (each counts once): {kinds.Max(pair => pair.count)}, {Names(kinds.Where(pair => pair.count == kinds.Max(other => other.count)).Select(pair => pair.who))}.");
        var totals = People.Select((who, at) => (who, sum: counted.Where(pair => pair.one.Angler == at).Sum(pair => pair.one.Quarters ?? 0))).ToList();
        if (totals.Max(pair => pair.sum) is var most and > 0)
        {
            expected.Add($"Best total (all measured lengths together): {Total(most)}, {Names(totals.Where(pair => pair.sum == most).Select(pair => pair.who))}.");
        }

        Assert.Equal(expected.Order(StringComparer.Ordinal), reply.Lines.Where(line => !line.StartsWith("Best condition", StringComparison.Ordinal)).Order(StringComparer.Ordinal));
        CompareCondition(counted, reply.Lines.SingleOrDefault(line => line.StartsWith("Best condition", StringComparison.Ordinal)));
    }

    // Standard weights, log10 W = a + b log10 L in grams and millimetres: walleye -5.453, 3.18 (Murphy and others 1990), yellow
    // perch -5.386, 3.23 (Willis and others 1991), northern pike -5.437, 3.096 (Anderson and Neumann 1996).
    private static void CompareCondition(List<(Fish One, int Number)> counted, string? line)
    {
        var relative = counted
            .Where(pair => pair.One is { Quarters: not null, Ounces: not null })
            .Select(pair => (pair.One, pair.Number, Percent: Math.Round(100 * pair.One.Ounces!.Value * 28.349523125 / Standard(pair.One.Species, pair.One.Quarters!.Value * 6.35), 1)))
            .ToList();
        if (relative.Count == 0)
        {
            Assert.Null(line);
            return;
        }

        var best = relative.Max(pair => pair.Percent);
        Assert.Contains($" at {best.ToString("0.0", CultureInfo.InvariantCulture)} %, ", line, StringComparison.Ordinal);
        Assert.EndsWith($"{Names(relative.Where(pair => pair.Percent == best).Select(pair => $"{People[pair.One.Angler]} (#{pair.Number})"))}.", line, StringComparison.Ordinal);
    }

    private static double Standard(string species, double millimetres)
    {
        var (a, b) = species switch { "walleye" => (-5.453, 3.180), "yellow-perch" => (-5.386, 3.230), _ => (-5.437, 3.096) };
        return Math.Pow(10, a + (b * Math.Log10(millimetres)));
    }

    private static string Inches(int quarters) => string.Create(CultureInfo.InvariantCulture, $"{quarters / 4m:0.##} in ({quarters * 0.635m:0.#} cm)");

    private static string Total(int quarters) => quarters * 0.635m < 1000
        ? Inches(quarters)
        : string.Create(CultureInfo.InvariantCulture, $"{quarters / 4m:0.##} in ({quarters * 0.00635m:0.0} m)");

    private static string Names(IEnumerable<string> names)
    {
        var level = names.Order(StringComparer.Ordinal).ToArray();
        return level.Length > 4 ? $"{level[0]}, {level[1]}, {level[2]}, {level[3]} and {level.Length - 4} more, all level" : string.Join(" and ", level);
    }

    private static async Task WriteAsync(CrewSession session, Fish[] fish)
    {
        var members = new MemberRepository(session);
        var ids = new List<long>();
        foreach (var person in People)
        {
            ids.Add((await members.FindOrAddAsync(person, person)).Id);
        }

        var basin = await new WaterRepository(session).AddAsync("Loon Basin");
        var catches = new CatchRepository(session);
        foreach (var one in fish)
        {
            var number = await catches.AddAsync(new CatchEntry
            {
                MemberId = ids[one.Angler],
                Species = one.Species,
                CaughtAt = Now.AddHours(-one.HoursAgo),
                LoggedAt = Now,
                WaterId = one.IsInBasin ? basin : null,
                Length = one.Quarters is { } quarters ? ExactLength.From(quarters / 4m, LengthUnit.Inch) : null,
                Weight = one.Ounces is { } ounces ? ExactMass.From(ounces, MassUnit.Ounce) : null,
            });
            if (one.IsVoid)
            {
                await catches.VoidAsync(number, Now);
            }
        }
    }

    private sealed record Fish(string Species, int Angler, int? Quarters, int? Ounces, int HoursAgo, bool IsVoid, bool IsInBasin);
}
