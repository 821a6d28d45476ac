using CrewBot.Storage.Buttons;
using CrewBot.Storage.Crews;
using CrewBot.Storage.People;

namespace CrewBot.Storage.Tests.Buttons;

public sealed class ButtonRepositoryTests : DatabaseTest
{
    private static readonly DateTimeOffset Now = new(2027, 1, 16, 14, 0, 0, TimeSpan.Zero);

    [Fact]
    public async Task FindAsync_KeptForAWeek_IsThereAndThenNot()
    {
        await KeepAsync(Now);

        Assert.Equal("a long command", await FindAsync("alpha", Now + ButtonRepository.Kept));
        Assert.Null(await FindAsync("alpha", Now + ButtonRepository.Kept + TimeSpan.FromMilliseconds(1)));
    }

    [Fact]
    public async Task FindAsync_OtherCrew_FindsNothing()
    {
        await KeepAsync(Now);

        Assert.Null(await FindAsync("bravo", Now));
    }

    [Fact]
    public async Task KeepAsync_ShownAgainLater_IsKeptFromThenOn()
    {
        await KeepAsync(Now);
        await KeepAsync(Now.AddDays(3));
        await Database.WriteAsync("alpha", session => new ButtonRepository(session).ForgetAsync(Now.AddDays(1)), Cancellation);

        Assert.Equal("a long command", await FindAsync("alpha", Now.AddDays(9)));
    }

    [Fact]
    public async Task EraseAsync_SomebodyOfTheCrew_TakesEveryButtonOfTheirCrewAndOfNoOther()
    {
        await KeepAsync(Now);
        await WriteAsync("bravo", session => new ButtonRepository(session).KeepAsync("key", "a long command", Now));
        await WriteAsync("alpha", async session =>
        {
            var ana = await new MemberRepository(session).FindOrAddAsync("4711", "Ana");
            await new HeldRepository(session).EraseAsync(ana.Id, "erased");
        });

        Assert.Null(await FindAsync("alpha", Now));
        Assert.NotNull(await FindAsync("bravo", Now));
    }

    private Task KeepAsync(DateTimeOffset at) =>
        Database.WriteAsync("alpha", session => new ButtonRepository(session).KeepAsync("key", "a long command", at), Cancellation);

    private Task<string?> FindAsync(string crew, DateTimeOffset at) =>
        Database.ReadAsync(crew, session => new ButtonRepository(session).FindAsync("key", at), Cancellation);
}
