using CrewBot.Core.Fish;
using CrewBot.Storage.Crews;
using CrewBot.Storage.Trips;
using Dapper;
using UnitsNet.Units;

namespace CrewBot.Storage.Tests.Trips;

public sealed class TripRepositoryTests : DatabaseTest
{
    private static readonly DateTimeOffset Meet = new(2027, 1, 17, 7, 0, 0, TimeSpan.Zero);

    [Fact]
    public async Task FindAsync_DepthInItsUnit_ComesBackAsItWasGiven()
    {
        var depth = ExactLength.From(7.3m, LengthUnit.Meter);

        Assert.Equal(depth, (await StoredAsync(depth)).Depth);
    }

    [Fact]
    public async Task FindAsync_StoredBeforeDepthsHadAUnit_IsInFeet()
    {
        var trip = await StoredAsync(ExactLength.From(7.3m, LengthUnit.Meter));
        await Database.Writing.ExecuteAsync("UPDATE trip SET roster = json_remove(roster, '$.depthUnit')");

        var found = await ReadAsync(Alpha, session => new TripRepository(session).FindAsync(trip.Number));
        Assert.Equal(new ExactLength(7_300_000_000, LengthUnit.Foot), found!.Depth);
    }

    private async Task<Trip> StoredAsync(ExactLength depth)
    {
        var number = await WriteAsync(Alpha, async session =>
        {
            var ana = await new MemberRepository(session).FindOrAddAsync("1", "Ana");
            var water = await new WaterRepository(session).AddAsync("Loon Basin");
            return await new TripRepository(session).AddAsync(new Trip(ana.Id, water, Meet, Meet.AddHours(9)) { Depth = depth });
        });
        return (await ReadAsync(Alpha, session => new TripRepository(session).FindAsync(number)))!;
    }
}
