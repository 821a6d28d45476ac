using CrewBot.Storage.Connections;
using CrewBot.Storage.Crews;
using Dapper;
using Microsoft.Data.Sqlite;
using SQLitePCL;

namespace CrewBot.Storage.Tests.Connections;

public sealed class GroupCommitTests : DatabaseTest
{
    [Fact]
    public async Task WriteAsync_ManyWaitWhileOneIsWritten_ShareTheNextCommit()
    {
        var commits = 0;
        raw.sqlite3_commit_hook(
            Database.Writing.Handle,
            _ =>
            {
                commits++;
                return 0;
            },
            null!);
        var (first, letGo) = HeldWrite();
        var others = Enumerable.Range(0, 50).Select(AddMember).ToList();
        letGo();
        await first;
        await Task.WhenAll(others);

        Assert.Equal(2, commits);
        Assert.Equal(50, (await ReadAsync(Alpha, session => new MemberRepository(session).AllAsync())).Count);
    }

    [Fact]
    public async Task WriteAsync_OneOfAGroupFails_OnlyItsCallerIsTold()
    {
        var (first, letGo) = HeldWrite();
        var good = AddMember(1);
        var bad = WriteAsync(Alpha, async session =>
        {
            await new MemberRepository(session).FindOrAddAsync("half", "Half");
            throw new InvalidOperationException("mine alone");
        });
        var alsoGood = AddMember(2);
        letGo();
        await Task.WhenAll(first, good, alsoGood);

        Assert.Equal("mine alone", (await Assert.ThrowsAsync<InvalidOperationException>(() => bad)).Message);
        Assert.Equal(["Angler 1", "Angler 2"], await NamesAsync());
    }

    [Fact]
    public async Task Afterwards_OfAGroup_IsDoneForWhatIsOnTheDiskAlone()
    {
        var done = new List<string>();
        var (first, letGo) = HeldWrite();
        var good = NotedAsync("good", () => { });
        var bad = NotedAsync("bad", () => throw new InvalidOperationException("mine alone"));
        letGo();
        await Task.WhenAll(first, good);
        await Assert.ThrowsAsync<InvalidOperationException>(() => bad);

        Assert.Equal(["good"], done);
        Task NotedAsync(string name, Action then) => WriteAsync(Alpha, async session =>
        {
            session.Afterwards(() => done.Add(name));
            await new MemberRepository(session).FindOrAddAsync(name, name);
            Assert.DoesNotContain(name, done);
            then();
        });
    }

    [Fact]
    public async Task WriteAsync_CancelledWhileItWaits_StoresNothing()
    {
        using var giveUp = new CancellationTokenSource();
        var (first, letGo) = HeldWrite();
        var cancelled = Database.WriteAsync(Alpha, session => new MemberRepository(session).FindOrAddAsync("1", "One"), giveUp.Token);
        await giveUp.CancelAsync();
        letGo();
        await first;

        await Assert.ThrowsAsync<TaskCanceledException>(() => cancelled);
        Assert.Empty(await NamesAsync());
    }

    [Fact]
    public async Task ReadAsync_WhileAWriteIsOpen_DoesNotWaitAndSeesWhatWasCommitted()
    {
        await AddMember(1);
        var entered = new TaskCompletionSource();
        var leave = new TaskCompletionSource();
        var open = WriteAsync(Alpha, async session =>
        {
            await new MemberRepository(session).FindOrAddAsync("2", "Angler 2");
            entered.SetResult();
            await leave.Task;
        });
        await entered.Task;

        Assert.Equal(["Angler 1"], await NamesAsync());

        leave.SetResult();
        await open;
        Assert.Equal(["Angler 1", "Angler 2"], await NamesAsync());
    }

    [Fact]
    public async Task WriteAsync_Returned_IsStillThereAfterTheFileWasReopened()
    {
        await AddMember(1);
        await ReopenAsync();

        Assert.Equal(["Angler 1"], await NamesAsync());
    }

    [Fact]
    public async Task WriteAsync_DiskFull_SaysSoToEachInOneLineAndLosesNothing()
    {
        await AddMember(1);
        var pages = await Database.Writing.QuerySingleAsync<long>("PRAGMA page_count");
        await Database.Writing.ExecuteAsync($"PRAGMA max_page_count = {pages}");
        var (first, letGo) = HeldWrite();
        var tooMuch = Enumerable.Range(2, 3).Select(AddBulkyMember).ToList();
        letGo();
        await first;
        foreach (var write in tooMuch)
        {
            Assert.Equal(
                $"The disk that holds {DatabasePath} is full. Nothing was stored: make room, then send it again.",
                (await Assert.ThrowsAsync<StorageException>(() => write)).Message);
        }

        Assert.Equal(["Angler 1"], await NamesAsync());
        await Database.Writing.ExecuteAsync("PRAGMA max_page_count = 1000000");
        await AddMember(2);
        Assert.Equal(["Angler 1", "Angler 2"], await NamesAsync());
        Assert.Equal("ok", await Database.Writing.QuerySingleAsync<string>("PRAGMA integrity_check"));
    }

    [Fact]
    public async Task WriteAsync_HeldByAnotherProgram_SaysSoInOneLine()
    {
        await using var other = new SqliteConnection($"Data Source={DatabasePath};Pooling=False");
        await other.OpenAsync(Cancellation);
        await other.ExecuteAsync("BEGIN IMMEDIATE");

        var refusal = await Assert.ThrowsAsync<StorageException>(() => AddMember(1));

        Assert.Equal($"{DatabasePath} is held by another program. Nothing was stored: try again, or end the other one.", refusal.Message);
        await other.ExecuteAsync("ROLLBACK TRANSACTION");
        await AddMember(1);
    }

    private Task AddMember(int number) =>
        WriteAsync(Alpha, session => new MemberRepository(session).FindOrAddAsync($"{number}", $"Angler {number}"));

    private Task AddBulkyMember(int number) =>
        WriteAsync(Alpha, session => new MemberRepository(session).FindOrAddAsync($"{number}", new string('x', 100_000)));

    private async Task<IReadOnlyList<string>> NamesAsync() =>
        [.. (await ReadAsync(Alpha, session => new MemberRepository(session).AllAsync())).Select(member => member.Name)];

    private (Task Write, Action LetGo) HeldWrite()
    {
        var leave = new TaskCompletionSource();
        return (WriteAsync(Alpha, (CrewSession _) => leave.Task), leave.SetResult);
    }
}
