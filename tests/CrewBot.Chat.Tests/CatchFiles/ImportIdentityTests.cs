using System.Text;
using CrewBot.Core.Fish;
using CrewBot.Storage.Catches;
using CrewBot.Storage.Connections;
using CrewBot.Storage.Crews;
using CrewBot.Storage.People;
using CsCheck;
using UnitsNet.Units;

namespace CrewBot.Chat.Tests.CatchFiles;

/// <summary>What is exported and imported into another database is the same log, in real files on both sides.</summary>
public sealed class ImportIdentityTests
{
    private static readonly DateTimeOffset Now = new(2027, 1, 16, 20, 0, 0, TimeSpan.Zero);

    // What the log can hold: any words without control characters, those among them that a spreadsheet takes for a formula.
    private static readonly Gen<string> Words =
        from start in Gen.OneOf("", "", "=", "+1", "-", "@", "\t", "\r", "\n", "'", "'=", "''", "\"", ";", ",", " ")
        from rest in Gen.Char[' ', '\u017F'].Where(character => !char.IsControl(character)).Array[1, 30]
        select start + new string(rest);

    private static readonly Gen<string> Names = Words.Select(words => $"x{string.Join(' ', words.Split(' ', '\t', '\r', '\n'))}".Trim()).Where(name => !name.Contains("  ", StringComparison.Ordinal));

    private static readonly Gen<ExactLength> FishLength =
        from unit in Gen.OneOf(LengthUnit.Inch, LengthUnit.Centimeter, LengthUnit.Millimeter, LengthUnit.Foot)
        from nanometres in Gen.OneOf(Gen.Long[50_000_000, 900_000_000], Gen.Long[8, 150].Select(quarters => quarters * 6_350_000))
        select new ExactLength(nanometres, unit);

    private static readonly Gen<ExactMass> FishWeight =
        from unit in Gen.OneOf(MassUnit.Pound, MassUnit.Ounce, MassUnit.Gram, MassUnit.Kilogram)
        from nanograms in Gen.OneOf(Gen.Long[20_000_000_000, 20_000_000_000_000], Gen.Long[1, 600].Select(ounces => ounces * 28_349_523_125))
        select new ExactMass(nanograms, unit);

    private static readonly Gen<ExactLength> Depth =
        from unit in Gen.OneOf(LengthUnit.Foot, LengthUnit.Meter, LengthUnit.Fathom, LengthUnit.Yard)
        from nanometres in Gen.Long[300_000_000, 150_000_000_000]
        select new ExactLength(nanometres, unit);

    private static readonly Gen<DateTimeOffset> Instant =
        from milliseconds in Gen.Long[0, Now.ToUnixTimeMilliseconds()]
        from quarters in Gen.Int[-48, 56]
        select DateTimeOffset.FromUnixTimeMilliseconds(milliseconds).ToOffset(TimeSpan.FromMinutes(15 * quarters));

    private static readonly Gen<(CatchEntry Entry, int Angler, int Place, bool IsVoid)> Fish =
        from species in Gen.OneOf("walleye", "yellow-perch", "northern-pike")
        from caughtAt in Instant
        from sizes in Gen.Select(FishLength.Nullable(), FishWeight.Nullable(), FishLength.Nullable(), Depth.Nullable())
        from words in Gen.Select(Names.Null(), Words.Null(), Words.Null())
        from rest in Gen.Select(Gen.OneOf(null, "negative", "positive"), Gen.Long[1, 10].Nullable(), Gen.Bool.Nullable(), Gen.OneOf(null, "jigging-spoon"))
        from hash in Gen.Byte.Array[32].Null()
        from place in Gen.Select(Gen.Int[0, 2], Gen.Int[0, 3], Gen.Int[0, 5])
        select (
            new CatchEntry
            {
                MemberId = 0,
                Species = species,
                CaughtAt = caughtAt,
                LoggedAt = caughtAt.ToUniversalTime(),
                Length = sizes.Item1,
                Weight = sizes.Item2,
                Girth = sizes.Item3,
                Depth = sizes.Item4,
                Lure = words.Item1,
                Note = words.Item2,
                Photo = words.Item3,
                PhotoHash = hash is null ? null : Convert.ToHexStringLower(hash),
                Mood = rest.Item1,
                Line = rest.Item2,
                Kept = rest.Item3,
                Presentation = rest.Item4,
            },
            place.Item1,
            place.Item2,
            place.Item3 == 0);

    [Fact]
    public Task Import_OfAnExport_IsTheSameLog() => Gen.Select(Names.Array[3], Names.Array[2], Fish.Array[1, 12]).SampleAsync(
        async log =>
        {
            var (people, waters, fish) = log;
            await using var first = new CrewRoom { Now = Now };
            await first.WriteAsync(session => WriteAsync(session, people, waters, fish));
            var exported = (await first.SayAsync("catch export")).Files.Single().Content;

            await using var second = new CrewRoom { Now = Now, File = exported };
            await second.SayAsync("catch import file:https://files.example/x.csv confirm:yes");
            var again = (await second.SayAsync("catch export")).Files.Single().Content;

            Assert.Equal(Encoding.UTF8.GetString(exported.Span), Encoding.UTF8.GetString(again.Span));
            Assert.Contains("nothing to add", (await second.SayAsync("catch import file:https://files.example/x.csv")).Headline, StringComparison.Ordinal);
        },
        iter: 40,
        threads: 2);

    private static async Task WriteAsync(
        CrewSession session, string[] people, string[] waters, (CatchEntry Entry, int Angler, int Place, bool IsVoid)[] fish)
    {
        var members = new MemberRepository(session);
        var lakes = new WaterRepository(session);
        var catches = new CatchRepository(session);
        var anglers = new List<long>();
        for (var at = 0; at < people.Length; at++)
        {
            anglers.Add((await members.FindOrAddAsync($"person-{at}", people[at])).Id);
        }

        var north = await lakes.AddAsync($"north {waters[0]}");
        var south = await lakes.AddAsync($"south {waters[1]}");
        (long?, long?)[] places = [(null, null), (north, null), (south, null), (south, await lakes.AddSpotAsync(south, "hump"))];
        foreach (var (entry, angler, place, isVoid) in fish)
        {
            var number = await catches.AddAsync(entry with { MemberId = anglers[angler], WaterId = places[place].Item1, SpotId = places[place].Item2 });
            if (isVoid)
            {
                await catches.VoidAsync(number, entry.LoggedAt.AddMinutes(1));
            }
        }

        await new HeldRepository(session).EraseAsync(anglers[2], "erased");
    }
}
