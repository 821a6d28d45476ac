using CrewBot.Storage.Crews;
using CrewBot.Storage.Requests;
using Microsoft.Data.Sqlite;

namespace CrewBot.Storage.Tests.Requests;

public sealed class RequestRepositoryTests : DatabaseTest
{
    private static readonly DateTimeOffset Morning = new(2027, 1, 16, 14, 0, 0, TimeSpan.Zero);

    [Fact]
    public async Task FindAnswerAsync_AfterRemembering_GivesTheFirstAnswerToThatCrewAlone()
    {
        await RememberAsync(Alpha, "r1", "first", Morning);

        Assert.Equal("first", await ReadAsync(Alpha, session => new RequestRepository(session).FindAnswerAsync("r1")));
        Assert.Null(await ReadAsync(Alpha, session => new RequestRepository(session).FindAnswerAsync("r2")));
        Assert.Null(await ReadAsync(Bravo, session => new RequestRepository(session).FindAnswerAsync("r1")));
    }

    [Fact]
    public async Task RememberAsync_SameRequestTwice_RefusesTheSecondWithAllItChanged()
    {
        await RememberAsync(Alpha, "r1", "first", Morning);

        await Assert.ThrowsAsync<SqliteException>(() => RememberAsync(Alpha, "r1", "second", Morning, name: "Someone else"));

        Assert.Equal("first", await ReadAsync(Alpha, session => new RequestRepository(session).FindAnswerAsync("r1")));
        Assert.Equal("Ana", (await ReadAsync(Alpha, session => new MemberRepository(session).FindAsync("1")))!.Name);
    }

    [Fact]
    public async Task ForgetAsync_OlderThanKept_GoesAndYoungerStays()
    {
        await RememberAsync(Alpha, "old", "x", Morning - RequestRepository.Kept - TimeSpan.FromMinutes(1));
        await RememberAsync(Alpha, "young", "y", Morning);

        await WriteAsync(Alpha, session => new RequestRepository(session).ForgetAsync(Morning - RequestRepository.Kept));

        Assert.Null(await ReadAsync(Alpha, session => new RequestRepository(session).FindAnswerAsync("old")));
        Assert.Equal("y", await ReadAsync(Alpha, session => new RequestRepository(session).FindAnswerAsync("young")));
    }

    private Task RememberAsync(string crew, string id, string answer, DateTimeOffset at, string name = "Ana") => WriteAsync(crew, async session =>
    {
        var member = await new MemberRepository(session).FindOrAddAsync("1", name);
        await new RequestRepository(session).RememberAsync(id, member.Id, answer, at);
    });
}
