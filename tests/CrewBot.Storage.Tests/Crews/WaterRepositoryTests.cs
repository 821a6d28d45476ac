using CrewBot.Storage.Crews;
using Microsoft.Data.Sqlite;

namespace CrewBot.Storage.Tests.Crews;

public sealed class WaterRepositoryTests : DatabaseTest
{
    [Fact]
    public async Task AllAsync_WaterWithEverything_ComesBackAsItWasGiven()
    {
        await WriteAsync(Alpha, async session =>
        {
            var waters = new WaterRepository(session);
            var id = await waters.AddAsync("Loon Basin");
            await waters.AddNameAsync(id, "the basin");
            await waters.PlaceAsync(id, 49.876m, -95.123m);
            await waters.AddSpotAsync(id, "North hump");
            await waters.SetRuleAsync(id, new WaterRule("lines", "1", "page 3"));
            await waters.SetRuleAsync(id, new WaterRule("lines", "2", "page 4"));
            await waters.SetRuleAsync(id, new WaterRule("lead", "no", "page 5"));
            await waters.RemoveRuleAsync(id, "lead");
        });

        var water = Assert.Single(await ReadAsync(Alpha, session => new WaterRepository(session).AllAsync()));
        Assert.Equal("Loon Basin", water.Name);
        Assert.Equal(["Loon Basin", "the basin"], water.Names);
        Assert.Equal((49.88m, -95.12m), water.At);
        Assert.Equal("North hump", Assert.Single(water.Spots).Name);
        Assert.Equal(new WaterRule("lines", "2", "page 4"), Assert.Single(water.Rules));
    }

    [Fact]
    public async Task FindAsync_AnyOfItsNamesInAnyCase_FindsIt()
    {
        var id = await WriteAsync(Alpha, session => new WaterRepository(session).AddAsync("Loon Basin"));

        Assert.Equal(id, await ReadAsync(Alpha, session => new WaterRepository(session).FindAsync("LOON-basin")));
        Assert.Null(await ReadAsync(Alpha, session => new WaterRepository(session).FindAsync("Loon")));
    }

    [Fact]
    public async Task AddAsync_NameTakenInThisCrew_IsRefusedAndFreeInAnother()
    {
        await WriteAsync(Alpha, session => new WaterRepository(session).AddAsync("Loon Basin"));

        await Assert.ThrowsAsync<SqliteException>(() => WriteAsync(Alpha, session => new WaterRepository(session).AddAsync("loon basin")));
        await WriteAsync(Bravo, session => new WaterRepository(session).AddAsync("Loon Basin"));
        Assert.Single(await ReadAsync(Alpha, session => new WaterRepository(session).AllAsync()));
    }

    [Fact]
    public async Task AnyChange_MovesTheCrewsRevision()
    {
        var before = await ReadAsync(Alpha, session => new CrewRepository(session).FindAsync());
        await WriteAsync(Alpha, session => new WaterRepository(session).AddAsync("Loon Basin"));
        var after = await ReadAsync(Alpha, session => new CrewRepository(session).FindAsync());

        Assert.True(after.Revision > before.Revision);
    }
}
