using CrewBot.Core.Fish;
using CrewBot.Storage.Catches;
using CrewBot.Storage.Crews;
using UnitsNet.Units;

namespace CrewBot.Storage.Tests.Catches;

public sealed class CatchRepositoryTests : DatabaseTest
{
    private static readonly DateTimeOffset Noon = new(2027, 1, 16, 12, 0, 0, TimeSpan.FromHours(-6));

    private long _ana;
    private long _bo;

    [Fact]
    public async Task FindAsync_EntryWithEverything_ComesBackAsItWasGiven()
    {
        var water = await WriteAsync(Alpha, session => new WaterRepository(session).AddAsync("Loon Basin"));
        var entry = Fish(22.5m) with
        {
            Weight = ExactMass.From(67.25m, MassUnit.Ounce),
            Girth = ExactLength.From(28.5m, LengthUnit.Centimeter),
            Depth = ExactLength.From(24, LengthUnit.Foot),
            WaterId = water,
            Presentation = "jigging-spoon",
            Lure = "gold",
            Mood = "negative",
            Line = 2,
            Kept = false,
            Note = "'; DROP TABLE catch_entry; --",
            Photo = "https://cdn.example/1.jpg",
        };

        var number = await AddAsync(entry);
        await ReopenAsync();

        var found = await ReadAsync(Alpha, session => new CatchRepository(session).FindAsync(number));
        Assert.Equal(new LoggedCatch(number, "Ana", "Loon Basin", IsVoid: false, entry) { AnglerId = "1" }, found);
    }

    // The inch is 25.4 mm by definition (1959 agreement), so each of its 64ths is a whole number of nanometres.
    [Fact]
    public async Task FindAsync_EveryQuarterInchAndHalfCentimetre_DoesNotDrift()
    {
        for (var step = 1; step <= 240; step++)
        {
            var inches = ExactLength.From(step / 4m, LengthUnit.Inch);
            var centimetres = ExactLength.From(step / 2m, LengthUnit.Centimeter);
            var first = await AddAsync(Fish(1) with { Length = inches, Girth = centimetres });
            var found = (await ReadAsync(Alpha, session => new CatchRepository(session).FindAsync(first)))!.Entry;
            Assert.Equal((step / 4m, step / 2m), (found.Length!.Value.Number, found.Girth!.Value.Number));
        }
    }

    [Fact]
    public async Task AddAsync_TwoCrews_EachCountsFromOne()
    {
        var stranger = await WriteAsync(Bravo, session => new MemberRepository(session).FindOrAddAsync("9", "Zed"));

        Assert.Equal(1, await AddAsync(Fish(20)));
        Assert.Equal(2, await AddAsync(Fish(21)));
        Assert.Equal(1, await WriteAsync(Bravo, session => new CatchRepository(session).AddAsync(Fish(22) with { MemberId = stranger.Id })));
    }

    [Fact]
    public async Task LongestAsync_EqualLengths_GivesTheEarlierAndSkipsVoid()
    {
        await AddAsync(Fish(20) with { CaughtAt = Noon.AddHours(1) });
        var earlier = await AddAsync(Fish(20));
        var longer = await AddAsync(Fish(30) with { MemberId = _bo });

        Assert.Equal(longer, (await LongestAsync(null))!.Number);
        Assert.Equal(earlier, (await LongestAsync(_ana))!.Number);

        await WriteAsync(Alpha, async session =>
        {
            var catches = new CatchRepository(session);
            await catches.VoidAsync((await catches.FindAsync(longer))!, _bo, Noon);
        });
        Assert.Equal(earlier, (await LongestAsync(null))!.Number);
    }

    [Fact]
    public async Task NewestOfAsync_GivesTheAnglersNewestAmongWhatWasLoggedSince()
    {
        await AddAsync(Fish(20) with { LoggedAt = Noon.AddMinutes(-2) });
        Assert.Null(await NewestAsync(_ana));

        var first = await AddAsync(Fish(21));
        await AddAsync(Fish(22) with { MemberId = _bo });
        Assert.Equal(first, (await NewestAsync(_ana))!.Number);

        var later = await AddAsync(Fish(23) with { CaughtAt = Noon.AddDays(-1) });
        Assert.Equal(later, (await NewestAsync(_ana))!.Number);

        Task<NewestCatch?> NewestAsync(long member) =>
            ReadAsync(Alpha, session => new CatchRepository(session).NewestOfAsync(member, Noon.AddMinutes(-1)));
    }

    [Fact]
    public async Task ReplaceAsync_ChangesTheEntryAndCountsTheChange()
    {
        var number = await AddAsync(Fish(20));
        await WriteAsync(Alpha, async session =>
        {
            var catches = new CatchRepository(session);
            await catches.ReplaceAsync((await catches.FindAsync(number))!, Fish(21), _ana, Noon);
        });

        var found = await ReadAsync(Alpha, session => new CatchRepository(session).FindAsync(number));
        Assert.Equal(21, found!.Entry.Length!.Value.Number);
        Assert.Equal(1, await ReadAsync(Alpha, session => new CatchRepository(session).ChangesAsync(number)));
    }

    [Fact]
    public async Task OpenOfAsync_LinesDownAndUp_ListsOnlyTheOpenOnes()
    {
        var first = await WriteAsync(Alpha, session => new LineSpellRepository(session).AddAsync(_ana, null, "small-jig", 2, Noon));
        var second = await WriteAsync(Alpha, session => new LineSpellRepository(session).AddAsync(_ana, null, null, 1, Noon.AddHours(1)));
        await WriteAsync(Alpha, session => new LineSpellRepository(session).CloseAsync(first, Noon.AddHours(2)));

        var open = Assert.Single(await ReadAsync(Alpha, session => new LineSpellRepository(session).OpenOfAsync(_ana)));
        Assert.Equal(new LineSpell(second, null, null, 1, Noon.AddHours(1), null), open);
    }

    protected override async Task PrepareAsync()
    {
        _ana = (await WriteAsync(Alpha, session => new MemberRepository(session).FindOrAddAsync("1", "Ana"))).Id;
        _bo = (await WriteAsync(Alpha, session => new MemberRepository(session).FindOrAddAsync("2", "Bo"))).Id;
    }

    private CatchEntry Fish(decimal inches) => new()
    {
        MemberId = _ana,
        Species = "walleye",
        CaughtAt = Noon,
        LoggedAt = Noon.ToUniversalTime(),
        Length = ExactLength.From(inches, LengthUnit.Inch),
    };

    private Task<long> AddAsync(CatchEntry entry) => WriteAsync(Alpha, session => new CatchRepository(session).AddAsync(entry));

    private Task<LongestCatch?> LongestAsync(long? member) =>
        ReadAsync(Alpha, session => new CatchRepository(session).LongestAsync("walleye", member));
}
