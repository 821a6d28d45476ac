using CrewBot.Core.Fish;
using CrewBot.Storage.Boxes;
using CrewBot.Storage.Crews;
using UnitsNet.Units;

namespace CrewBot.Storage.Tests.Boxes;

public sealed class BoxRepositoryTests : DatabaseTest
{
    private static readonly Gear Spoon = new()
    {
        Kind = BoxKind.Lure,
        Name = "1/8 oz lead jigging spoon",
        Record = "jigging-spoon",
        Material = "lead",
        Mass = ExactMass.From(0.125m, MassUnit.Ounce),
    };

    private static readonly Gear Auger = new() { Kind = BoxKind.Auger, Name = "auger", Width = ExactLength.From(8, LengthUnit.Inch) };

    private static readonly Gear Shelter = new() { Kind = BoxKind.Shelter, Name = "shelter for 3", Seats = 3 };

    private long _ana;
    private long _bo;

    [Fact]
    public async Task OfAsync_ThingsWithEveryFigure_ComeBackAsTheyWereGiven()
    {
        foreach (var gear in (Gear[])[Spoon, Auger, Shelter])
        {
            await AddAsync(_ana, gear);
        }

        await ReopenAsync();

        Assert.Equal([Spoon, Auger, Shelter], (await OfAsync(_ana)).Select(owned => owned.Gear));
    }

    [Fact]
    public async Task RemoveAsync_AnothersThing_LeavesIt()
    {
        var number = await AddAsync(_bo, Auger);

        await WriteAsync(Alpha, session => new BoxRepository(session).RemoveAsync(_ana, number));

        Assert.Equal([new OwnedGear(number, _bo, "Bo", Auger)], await OfAsync(_bo));
    }

    [Fact]
    public async Task AllAsync_TwoOwners_ComeByName()
    {
        await AddAsync(_bo, Auger);
        await AddAsync(_ana, Spoon);

        Assert.Equal(["Ana", "Bo"], (await ReadAsync(Alpha, session => new BoxRepository(session).AllAsync())).Select(owned => owned.Owner));
    }

    protected override async Task PrepareAsync()
    {
        _ana = (await WriteAsync(Alpha, session => new MemberRepository(session).FindOrAddAsync("ana", "Ana"))).Id;
        _bo = (await WriteAsync(Alpha, session => new MemberRepository(session).FindOrAddAsync("bo", "Bo"))).Id;
    }

    private Task<long> AddAsync(long member, Gear gear) => WriteAsync(Alpha, session => new BoxRepository(session).AddAsync(member, gear));

    private Task<IReadOnlyList<OwnedGear>> OfAsync(long member) =>
        ReadAsync(Alpha, session => new BoxRepository(session).OfAsync(member));
}
