using CrewBot.Storage.Connections;

namespace CrewBot.Storage.Tests;

/// <summary>A test with a database of its own, in a real file.</summary>
public abstract class DatabaseTest : IAsyncLifetime
{
    protected const string Alpha = "alpha";
    protected const string Bravo = "bravo";

    private readonly TemporaryFolder _folder = new();

    protected static CancellationToken Cancellation => TestContext.Current.CancellationToken;

    protected string DatabasePath => _folder.File();

    protected Database Database { get; private set; } = null!;

    public async ValueTask InitializeAsync()
    {
        Database = await Database.OpenAsync(DatabasePath, Cancellation);
        await PrepareAsync();
    }

    public async ValueTask DisposeAsync()
    {
        await Database.DisposeAsync();
        _folder.Dispose();
        GC.SuppressFinalize(this);
    }

    protected virtual Task PrepareAsync() => Task.CompletedTask;

    protected async Task ReopenAsync()
    {
        await Database.DisposeAsync();
        Database = await Database.OpenAsync(DatabasePath, Cancellation);
    }

    protected Task<T> ReadAsync<T>(string crew, Func<CrewSession, Task<T>> ask) => Database.ReadAsync(crew, ask, Cancellation);

    protected Task<T> WriteAsync<T>(string crew, Func<CrewSession, Task<T>> change) => Database.WriteAsync(crew, change, Cancellation);

    protected Task WriteAsync(string crew, Func<CrewSession, Task> change) => Database.WriteAsync(crew, change, Cancellation);
}
