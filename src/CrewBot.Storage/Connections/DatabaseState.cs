using CrewBot.Storage.Outbox;
using Microsoft.Data.Sqlite;
using SQLitePCL;

namespace CrewBot.Storage.Connections;

/// <summary>How a database stands, for whoever runs the program: looked at as it is, whoever else is using it, and changed in nothing.</summary>
/// <param name="Shape">The number of its newest script.</param>
/// <param name="Damage">What the quick check found; null for nothing.</param>
/// <param name="IsChecked">The quick check came to its end in the time it had.</param>
/// <param name="Posts">What is still to be said; null while it has no table for that.</param>
public sealed record DatabaseState(int Shape, string? Damage, bool IsChecked, PostState? Posts)
{
    private const int ShapeWithPosts = 5;

    private static readonly TimeSpan LongestCheck = TimeSpan.FromSeconds(5);

    /// <summary>The shape that this program brings a database to.</summary>
    public static int NewestShape => Schema.Shape.Newest;

    /// <summary>Looks at a file that is there.</summary>
    /// <exception cref="StorageException">It can't be used; the line says why.</exception>
    public static async Task<DatabaseState> ReadAsync(string path, CancellationToken cancellationToken)
    {
        try
        {
            await using var connection = new SqliteConnection(
                new SqliteConnectionStringBuilder { DataSource = path, Mode = SqliteOpenMode.ReadWrite, Pooling = false, DefaultTimeout = 2 }.ToString());
            await connection.OpenAsync(cancellationToken);

            // Taking the writer's place and leaving it shows that the file can be written.
            await connection.RunAsync("BEGIN IMMEDIATE; ROLLBACK;");
            var shape = await Schema.Shape.CheckAsync(connection, path);
            var (damage, isChecked) = await CheckAsync(connection);
            return new DatabaseState(shape, damage, isChecked, shape < ShapeWithPosts ? null : await PostState.ReadAsync(connection));
        }
        catch (SqliteException fault) when (StorageFaults.IsOutside(fault))
        {
            throw StorageFaults.Of(fault, path);
        }
    }

    private static async Task<(string? Damage, bool IsChecked)> CheckAsync(SqliteConnection connection)
    {
        await using var patience = new Timer(_ => raw.sqlite3_interrupt(connection.Handle), null, LongestCheck, Timeout.InfiniteTimeSpan);
        try
        {
            return ((await connection.AskAsync("PRAGMA quick_check(1)", Column.Text))[0] is not "ok" and var damage ? damage : null, true);
        }
        catch (SqliteException over) when (over.SqliteErrorCode == raw.SQLITE_INTERRUPT)
        {
            return (null, false);
        }
    }
}
