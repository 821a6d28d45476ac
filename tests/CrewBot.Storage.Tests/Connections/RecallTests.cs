using CrewBot.Storage.Connections;
using CrewBot.Storage.Crews;

namespace CrewBot.Storage.Tests.Connections;

public sealed class RecallTests : DatabaseTest
{
    private int _asked;

    [Fact]
    public async Task RecallAsync_NothingCommittedSince_AsksOnce()
    {
        await NameAsync(Alpha, "Loon Basin crew");

        Assert.Equal("Loon Basin crew", await RecallAsync(Alpha));
        Assert.Equal("Loon Basin crew", await RecallAsync(Alpha));

        Assert.Equal(1, _asked);
    }

    [Fact]
    public async Task RecallAsync_CommittedHere_SeesIt()
    {
        await NameAsync(Alpha, "Loon Basin crew");
        await RecallAsync(Alpha);
        await NameAsync(Alpha, "Tamarack Bay crew");

        Assert.Equal("Tamarack Bay crew", await RecallAsync(Alpha));
    }

    [Fact]
    public async Task RecallAsync_CommittedByAnotherProcess_SeesIt()
    {
        await NameAsync(Alpha, "Loon Basin crew");
        await RecallAsync(Alpha);
        await using (var other = await Database.OpenAsync(DatabasePath, Cancellation))
        {
            await other.WriteAsync(Alpha, session => new CrewRepository(session).SetNameAsync("Tamarack Bay crew"), Cancellation);
        }

        Assert.Equal("Tamarack Bay crew", await RecallAsync(Alpha));
    }

    [Fact]
    public async Task RecallAsync_CommittedWhileItAsks_IsAskedAgain()
    {
        await NameAsync(Alpha, "Loon Basin crew");
        await Database.RecallAsync(Alpha, "name", async session =>
        {
            var before = await NameAsync(session);
            await NameAsync(Alpha, "Tamarack Bay crew");
            return before;
        }, Cancellation);

        Assert.Equal("Tamarack Bay crew", await RecallAsync(Alpha));
    }

    [Fact]
    public async Task RecallAsync_TheSameSubjectOfAnotherCrew_IsItsOwn()
    {
        await NameAsync(Alpha, "Loon Basin crew");
        await NameAsync(Bravo, "Tamarack Bay crew");

        Assert.Equal("Loon Basin crew", await RecallAsync(Alpha));
        Assert.Equal("Tamarack Bay crew", await RecallAsync(Bravo));
    }

    private Task<string> RecallAsync(string crew) => Database.RecallAsync(
        crew,
        "name",
        session =>
        {
            _asked++;
            return NameAsync(session);
        },
        Cancellation);

    private static async Task<string> NameAsync(CrewSession session) => (await new CrewRepository(session).FindAsync()).Name!;

    private Task NameAsync(string crew, string name) => WriteAsync(crew, session => new CrewRepository(session).SetNameAsync(name));
}
