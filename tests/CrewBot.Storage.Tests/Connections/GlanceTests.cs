using CrewBot.Storage.Connections;
using CrewBot.Storage.Crews;
using SQLitePCL;

namespace CrewBot.Storage.Tests.Connections;

public sealed class GlanceTests : DatabaseTest
{
    [Fact]
    public async Task GlanceAsync_NobodyWrites_AsksTheConnectionThatWrites()
    {
        await AddMember(1);
        var asked = 0;
        raw.sqlite3_trace(Database.Writing.Handle, (object _, string _) => asked++, null!);

        Assert.Equal(["Angler 1"], await NamesAsync());

        Assert.True(asked > 0);
    }

    [Fact]
    public async Task GlanceAsync_WhileAWriteIsOpen_DoesNotWaitAndSeesWhatWasCommitted()
    {
        await AddMember(1);
        var leave = new TaskCompletionSource();
        var open = WriteAsync(Alpha, async session =>
        {
            await new MemberRepository(session).FindOrAddAsync("2", "Angler 2");
            await leave.Task;
        });

        Assert.Equal(["Angler 1"], await NamesAsync());

        leave.SetResult();
        await open;
        Assert.Equal(["Angler 1", "Angler 2"], await NamesAsync());
    }

    [Fact]
    public async Task GlanceAsync_AWriteComesMeanwhile_IsMadeAfterwards()
    {
        var (names, write) = await Database.GlanceAsync(
            Alpha,
            async session =>
            {
                var write = AddMember(1);
                Assert.False(write.IsCompleted);
                return (await new MemberRepository(session).AllAsync(), write);
            },
            Cancellation);
        await write;

        Assert.Empty(names);
        Assert.Equal(["Angler 1"], await NamesAsync());
    }

    [Fact]
    public async Task GlanceAsync_Fails_LeavesTheWriterToOthers()
    {
        await Assert.ThrowsAsync<InvalidOperationException>(
            () => Database.GlanceAsync<bool>(Alpha, _ => throw new InvalidOperationException("mine alone"), Cancellation));

        await AddMember(1);
        Assert.Equal(["Angler 1"], await NamesAsync());
    }

    private Task<CrewMember> AddMember(int number) =>
        WriteAsync(Alpha, session => new MemberRepository(session).FindOrAddAsync($"{number}", $"Angler {number}"));

    private async Task<IEnumerable<string>> NamesAsync() =>
        (await Database.GlanceAsync(Alpha, session => new MemberRepository(session).AllAsync(), Cancellation)).Select(member => member.Name);
}
