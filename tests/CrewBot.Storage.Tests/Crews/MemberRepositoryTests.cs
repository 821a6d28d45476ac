using CrewBot.Storage.Crews;
using CrewBot.Storage.People;
using CrewBot.Storage.Requests;

namespace CrewBot.Storage.Tests.Crews;

public sealed class MemberRepositoryTests : DatabaseTest
{
    [Fact]
    public async Task FindOrAddAsync_CameBackUnderAnotherName_IsTheSamePersonByTheNewName()
    {
        var first = await WriteAsync(Alpha, session => new MemberRepository(session).FindOrAddAsync("1", "Ana"));
        var second = await WriteAsync(Alpha, session => new MemberRepository(session).FindOrAddAsync("1", "Ana B"));

        Assert.Equal(first.Id, second.Id);
        Assert.Equal("Ana B", (await ReadAsync(Alpha, session => new MemberRepository(session).FindAsync("1")))!.Name);
    }

    [Fact]
    public async Task SetRoleAndUnits_AreKept()
    {
        await WriteAsync(Alpha, async session =>
        {
            var members = new MemberRepository(session);
            var ana = await members.FindOrAddAsync("1", "Ana");
            await members.SetRoleAsync(ana.Id, CrewRole.Steward);
            await members.SetUnitsAsync(ana.Id, UnitSystem.Metric);
        });

        var member = await ReadAsync(Alpha, session => new MemberRepository(session).FindAsync("1"));
        Assert.Equal((CrewRole.Steward, UnitSystem.Metric), (member!.Role, member.Units));
    }

    [Fact]
    public async Task CrewsOfAsync_InTwoCrews_NamesTheOneWrittenInLastFirst()
    {
        var start = DateTimeOffset.UnixEpoch.AddYears(57);
        await AnswerAsync(Alpha, "1", start.AddMinutes(5));
        await AnswerAsync(Bravo, "1", start);
        await AnswerAsync(Bravo, "2", start.AddMinutes(9));

        Assert.Equal([Alpha, Bravo], await Database.CrewsOfAsync("1", Cancellation));
        Assert.Equal([Bravo], await Database.CrewsOfAsync("2", Cancellation));
        Assert.Empty(await Database.CrewsOfAsync("3", Cancellation));
    }

    [Fact]
    public async Task CrewsOfAsync_Erased_NamesNone()
    {
        var ana = await WriteAsync(Alpha, session => new MemberRepository(session).FindOrAddAsync("1", "Ana"));
        await WriteAsync(Alpha, session => new HeldRepository(session).EraseAsync(ana.Id, "erased"));

        Assert.Empty(await Database.CrewsOfAsync("1", Cancellation));
    }

    [Fact]
    public async Task EraseAsync_NobodyFindsThemAnyMoreAndAReturnIsANewPerson()
    {
        var ana = await WriteAsync(Alpha, session => new MemberRepository(session).FindOrAddAsync("1", "Ana"));
        await WriteAsync(Alpha, session => new HeldRepository(session).EraseAsync(ana.Id, "erased"));

        Assert.Empty(await ReadAsync(Alpha, session => new MemberRepository(session).AllAsync()));
        Assert.Null(await ReadAsync(Alpha, session => new MemberRepository(session).FindAsync("1")));
        var again = await WriteAsync(Alpha, session => new MemberRepository(session).FindOrAddAsync("1", "Ana"));
        Assert.NotEqual(ana.Id, again.Id);
    }

    [Fact]
    public async Task NamesOfAsync_AfterRenamings_HoldsEachNameOnceUntilThePersonIsErased()
    {
        var ana = await WriteAsync(Alpha, session => new MemberRepository(session).FindOrAddAsync("1", "Ana"));
        foreach (var name in (string[])["Ana Lind", "Ana", "Annie"])
        {
            await WriteAsync(Alpha, session => new MemberRepository(session).FindOrAddAsync("1", name));
        }

        Assert.Equal(["Ana", "Ana Lind", "Annie"], (await ReadAsync(Alpha, session => new MemberRepository(session).NamesOfAsync(ana.Id))).Order());
        await WriteAsync(Alpha, session => new HeldRepository(session).EraseAsync(ana.Id, "erased"));
        Assert.Equal([MemberRepository.Former], await ReadAsync(Alpha, session => new MemberRepository(session).NamesOfAsync(ana.Id)));
    }

    private Task AnswerAsync(string crew, string person, DateTimeOffset at) => WriteAsync(crew, async session =>
    {
        var member = await new MemberRepository(session).FindOrAddAsync(person, "Ana");
        await new RequestRepository(session).RememberAsync($"{crew}-{person}", member.Id, "{}", at);
    });
}
