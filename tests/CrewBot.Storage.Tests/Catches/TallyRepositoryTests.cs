using CrewBot.Core.Fish;
using CrewBot.Storage.Catches;
using CrewBot.Storage.Connections;
using CrewBot.Storage.Crews;
using CsCheck;
using UnitsNet.Units;

namespace CrewBot.Storage.Tests.Catches;

/// <summary>The tallies that are kept, against a plain count of the log's own rows.</summary>
public sealed class TallyRepositoryTests : DatabaseTest
{
    private static readonly DateTimeOffset Noon = new(2027, 1, 16, 12, 0, 0, TimeSpan.FromHours(-6));

    // From a few of everything, so that fish often share a tally and a length.
    private static readonly Gen<Change> AnyChange =
        from what in Gen.OneOf("add", "add", "add", "edit", "void")
        from species in Gen.OneOf("walleye", "burbot")
        from angler in Gen.Int[0, 1]
        from inches in Gen.Int[18, 20].Nullable()
        from daysAgo in Gen.OneOf(Gen.Int[0, 3], Gen.Int[360, 370])
        from of in Gen.Int[0, 20]
        select new Change(what, species, angler, inches, daysAgo, of);

    [Fact]
    public Task OfSeasonAsync_AnyAddsEditsAndVoids_EqualsAPlainCount() => AnyChange.Array[1, 20].SampleAsync(
        async changes =>
        {
            var crew = Guid.NewGuid().ToString();
            await WriteAsync(crew, session => MakeAsync(session, changes));
            var (log, seasons, all, between) = await ReadAsync(crew, async session =>
            {
                var tallies = new TallyRepository(session);
                return (
                    await new CatchRepository(session).AllAsync(), new[] { await tallies.OfSeasonAsync(2025), await tallies.OfSeasonAsync(2026) },
                    await tallies.OfSeasonAsync(null), await tallies.BetweenAsync(Noon.AddDays(-5), Noon, null));
            });

            Assert.Equal(Counted(log.Where(fish => Season.Of(fish.Entry.CaughtAt) == 2025)), Sorted(seasons[0]));
            Assert.Equal(Counted(log.Where(fish => Season.Of(fish.Entry.CaughtAt) == 2026)), Sorted(seasons[1]));
            Assert.Equal(Counted(log), Sorted(all));
            Assert.Equal(Counted(log.Where(fish => fish.Entry.CaughtAt >= Noon.AddDays(-5))), Sorted(between));
        },
        iter: 60,
        threads: 1);

    [Fact]
    public async Task OfSeasonAsync_TwoFishAsLongInTwoSeasons_TheEarlierStands()
    {
        var tallies = await WriteAsync(Alpha, async session =>
        {
            var ana = (await new MemberRepository(session).FindOrAddAsync("1", "Ana")).Id;
            var fish = new CatchEntry
            {
                MemberId = ana,
                Species = "walleye",
                CaughtAt = Noon,
                LoggedAt = Noon,
                Length = ExactLength.From(20, LengthUnit.Inch),
            };
            var catches = new CatchRepository(session);
            await catches.AddAsync(fish);
            await catches.AddAsync(fish with { CaughtAt = Noon.AddYears(-1) });
            await catches.AddAsync(fish with { CaughtAt = Noon.AddYears(-2), Length = null });
            return await new TallyRepository(session).OfSeasonAsync(null);
        });
        var tally = Assert.Single(tallies);
        Assert.Equal((3, 2, 2 * 508_000_000L), (tally.Fish, tally.Longest, tally.TotalNm));
    }

    [Fact]
    public async Task WeighedAsync_FishWithoutLengthWeightOrStanding_AreLeftOut()
    {
        var weighed = await WriteAsync(Alpha, async session =>
        {
            var ana = (await new MemberRepository(session).FindOrAddAsync("1", "Ana")).Id;
            var fish = new CatchEntry { MemberId = ana, Species = "walleye", CaughtAt = Noon, LoggedAt = Noon };
            var length = ExactLength.From(20, LengthUnit.Inch);
            var weight = ExactMass.From(3, MassUnit.Pound);
            var catches = new CatchRepository(session);
            await catches.AddAsync(fish with { Length = length });
            await catches.AddAsync(fish with { Weight = weight });
            await catches.VoidAsync(await catches.AddAsync(fish with { Length = length, Weight = weight }), Noon);
            var counts = await catches.AddAsync(fish with { Length = length, Weight = weight });
            var read = Assert.Single(await new TallyRepository(session).WeighedAsync(Noon, Noon, null));
            Assert.Equal((counts, "Ana", "walleye"), (read.Number, read.Angler, read.Species));
            Assert.Equal(508m, read.Length.Number);
            Assert.Equal(1360.77711m, read.Weight.Number);
            return counts;
        });
        Assert.Equal(4, weighed);
    }

    private static async Task MakeAsync(CrewSession session, Change[] changes)
    {
        var members = new MemberRepository(session);
        long[] anglers = [(await members.FindOrAddAsync("ana", "Ana")).Id, (await members.FindOrAddAsync("bo", "Bo")).Id];
        var catches = new CatchRepository(session);
        var count = 0;
        foreach (var change in changes)
        {
            var entry = new CatchEntry
            {
                MemberId = anglers[change.Angler],
                Species = change.Species,
                CaughtAt = Noon.AddDays(-change.DaysAgo),
                LoggedAt = Noon,
                Length = change.Inches is { } inches ? ExactLength.From(inches, LengthUnit.Inch) : null,
            };
            var old = count == 0 ? null : await catches.FindAsync(1 + (change.Of % count));
            if (change.What == "add" || old is null)
            {
                await catches.AddAsync(entry);
                count++;
            }
            else if (change.What == "void")
            {
                await catches.VoidAsync(old, anglers[0], Noon);
            }
            else if (!old.IsVoid)
            {
                await catches.ReplaceAsync(old, entry with { MemberId = old.Entry.MemberId }, anglers[0], Noon);
            }
        }
    }

    private static IEnumerable<CatchTally> Counted(IEnumerable<LoggedCatch> log) => Sorted(log
        .Where(fish => !fish.IsVoid)
        .GroupBy(fish => (fish.Entry.MemberId, fish.Angler, fish.Entry.Species))
        .Select(own =>
        {
            var longest = own.Where(fish => fish.Entry.Length is not null)
                .OrderByDescending(fish => fish.Entry.Length!.Value.Nanometres).ThenBy(fish => fish.Entry.CaughtAt).ThenBy(fish => fish.Number).FirstOrDefault();
            return new CatchTally(
                own.Key.MemberId, own.Key.Angler, own.Key.Species, own.Count(), own.Sum(fish => fish.Entry.Length?.Nanometres ?? 0),
                longest?.Entry.Length!.Value.Nanometres, longest?.Number);
        }));

    private static IEnumerable<CatchTally> Sorted(IEnumerable<CatchTally> tallies) =>
        tallies.OrderBy(tally => tally.MemberId).ThenBy(tally => tally.Species, StringComparer.Ordinal);

    private sealed record Change(string What, string Species, int Angler, int? Inches, int DaysAgo, int Of);
}
