using CrewBot.Storage.Connections;
using CrewBot.Storage.Crews;

namespace CrewBot.Storage.Tests.Connections;

public sealed class DatabaseFaultTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    private static CancellationToken Cancellation => TestContext.Current.CancellationToken;

    [Fact]
    public async Task OpenAsync_NotADatabase_IsRefusedInALineAndLeftAsItIs()
    {
        var bytes = new byte[8192];
        Random.Shared.NextBytes(bytes);
        await File.WriteAllBytesAsync(_folder.File(), bytes, Cancellation);

        var refusal = await Assert.ThrowsAsync<StorageException>(() => Database.OpenAsync(_folder.File(), Cancellation));

        Assert.StartsWith($"{_folder.File()} is damaged or not a database of CrewBot.", refusal.Message, StringComparison.Ordinal);
        Assert.Equal(bytes, await File.ReadAllBytesAsync(_folder.File(), Cancellation));
    }

    [Fact]
    public async Task ReadAsync_DamagedPages_SaysSoInALine()
    {
        await using (var sound = await Database.OpenAsync(_folder.File(), Cancellation))
        {
            await sound.WriteAsync("alpha", session => new MemberRepository(session).FindOrAddAsync("1", "Ana"), Cancellation);
        }

        await using (var file = new FileStream(_folder.File(), FileMode.Open))
        {
            file.Position = 4096;
            await file.WriteAsync(Enumerable.Repeat((byte)0xA5, (int)file.Length - 4096).ToArray(), Cancellation);
        }

        var refusal = await Assert.ThrowsAsync<StorageException>(async () =>
        {
            await using var damaged = await Database.OpenAsync(_folder.File(), Cancellation);
            await damaged.ReadAsync("alpha", session => new MemberRepository(session).AllAsync(), Cancellation);
        });

        Assert.Contains("is damaged", refusal.Message, StringComparison.Ordinal);
    }

    [Fact]
    public async Task OpenAsync_FolderCannotBeMade_IsRefusedInALine()
    {
        await File.WriteAllTextAsync(_folder.File("occupied"), "", Cancellation);
        var path = Path.Combine(_folder.File("occupied"), "crew.db");

        var refusal = await Assert.ThrowsAsync<StorageException>(() => Database.OpenAsync(path, Cancellation));

        Assert.Equal($"{path} can't be written: choose a place that this user may write to, or give this user access to it.", refusal.Message);
    }

    [Fact]
    public async Task OpenAsync_ReadOnlyFolder_IsRefusedInALine()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows() || Environment.UserName == "root", "Folder rights do not bind this user.");
        var folder = Directory.CreateDirectory(_folder.File("closed"));
        if (!OperatingSystem.IsWindows())
        {
            folder.UnixFileMode = UnixFileMode.UserRead | UnixFileMode.UserExecute;
        }

        var path = Path.Combine(folder.FullName, "crew.db");

        var refusal = await Assert.ThrowsAsync<StorageException>(() => Database.OpenAsync(path, Cancellation));

        Assert.StartsWith($"{path} can't be written", refusal.Message, StringComparison.Ordinal);
    }

    [Fact]
    public async Task OpenAsync_KernelRefusesToWrite_IsRefusedInALine()
    {
        Assert.SkipUnless(OperatingSystem.IsLinux(), "Needs a file system that nobody can write to, whatever their rights.");

        var refusal = await Assert.ThrowsAsync<StorageException>(() => Database.OpenAsync("/proc/crewbot/crew.db", Cancellation));

        Assert.StartsWith("/proc/crewbot/crew.db can't be written", refusal.Message, StringComparison.Ordinal);
    }

    public void Dispose() => _folder.Dispose();
}
