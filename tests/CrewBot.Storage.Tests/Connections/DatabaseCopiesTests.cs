using CrewBot.Storage.Connections;
using CrewBot.Storage.Crews;

namespace CrewBot.Storage.Tests.Connections;

public sealed class DatabaseCopiesTests : DatabaseTest, IDisposable
{
    private readonly TemporaryFolder _elsewhere = new();

    [Fact]
    public async Task BackUpAsync_WhileItServes_CanBeOpenedAsItWas()
    {
        await AddAsync("Ana");
        await DatabaseCopies.BackUpAsync(DatabasePath, _elsewhere.File("copy.db"));
        await AddAsync("Bo");

        await using var copy = await Database.OpenAsync(_elsewhere.File("copy.db"), Cancellation);
        Assert.Equal(["Ana"], (await copy.ReadAsync(Alpha, session => new MemberRepository(session).AllAsync(), Cancellation)).Select(member => member.Name));
    }

    [Fact]
    public async Task BackUpAsync_FileIsThere_IsRefused()
    {
        await DatabaseCopies.BackUpAsync(DatabasePath, _elsewhere.File("copy.db"));

        var refusal = await Assert.ThrowsAsync<StorageException>(() => DatabaseCopies.BackUpAsync(DatabasePath, _elsewhere.File("copy.db")));
        Assert.Contains("is there already", refusal.Message, StringComparison.Ordinal);
    }

    [Fact]
    public async Task RestoreAsync_DatabaseIsThere_NeedsForceAndThenBringsTheCopyBack()
    {
        await AddAsync("Ana");
        await DatabaseCopies.BackUpAsync(DatabasePath, _elsewhere.File("copy.db"));
        await AddAsync("Bo");
        await Database.DisposeAsync();

        var refusal = await Assert.ThrowsAsync<StorageException>(() => DatabaseCopies.RestoreAsync(_elsewhere.File("copy.db"), DatabasePath, force: false));
        Assert.Contains("--force", refusal.Message, StringComparison.Ordinal);
        await DatabaseCopies.RestoreAsync(_elsewhere.File("copy.db"), DatabasePath, force: true);

        await using var restored = await Database.OpenAsync(DatabasePath, Cancellation);
        Assert.Equal(["Ana"], (await restored.ReadAsync(Alpha, session => new MemberRepository(session).AllAsync(), Cancellation)).Select(member => member.Name));
    }

    [Fact]
    public async Task RestoreAsync_DatabaseInUse_IsRefusedAndLeftAsItIs()
    {
        await AddAsync("Ana");
        await DatabaseCopies.BackUpAsync(DatabasePath, _elsewhere.File("copy.db"));

        var refusal = await Assert.ThrowsAsync<StorageException>(() => DatabaseCopies.RestoreAsync(_elsewhere.File("copy.db"), DatabasePath, force: true));

        Assert.Contains("is in use", refusal.Message, StringComparison.Ordinal);
        await AddAsync("Bo");
    }

    [Fact]
    public async Task RestoreAsync_DamagedCopy_IsRefusedAndTheDatabaseIsAsItWas()
    {
        await AddAsync("Ana");
        await Database.DisposeAsync();
        await File.WriteAllTextAsync(_elsewhere.File("copy.db"), new string('x', 8192), Cancellation);

        await Assert.ThrowsAsync<StorageException>(() => DatabaseCopies.RestoreAsync(_elsewhere.File("copy.db"), DatabasePath, force: true));

        await using var kept = await Database.OpenAsync(DatabasePath, Cancellation);
        Assert.Single(await kept.ReadAsync(Alpha, session => new MemberRepository(session).AllAsync(), Cancellation));
    }

    public void Dispose() => _elsewhere.Dispose();

    private async Task AddAsync(string name) => await WriteAsync(Alpha, session => new MemberRepository(session).FindOrAddAsync(name, name));
}
