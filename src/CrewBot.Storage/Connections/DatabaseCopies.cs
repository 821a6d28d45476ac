using CrewBot.Storage.Schema;
using Microsoft.Data.Sqlite;

namespace CrewBot.Storage.Connections;

/// <summary>Makes copies of a database while it serves, and puts one back.</summary>
public static class DatabaseCopies
{
    /// <summary>Copies the database by the online backup interface, whoever may be writing to it, and checks the copy.</summary>
    /// <exception cref="StorageException">It can't be done; the line says why.</exception>
    public static async Task BackUpAsync(string database, string file)
    {
        if (!File.Exists(database))
        {
            throw new StorageException($"{database} is not there yet: nothing has been stored.");
        }

        if (File.Exists(file))
        {
            throw new StorageException($"{file} is there already: give another name.");
        }

        await GuardedAsync(database, () => CopyAsync(database, file, replaces: false));
    }

    /// <summary>Checks a copy and puts it in the database's place.</summary>
    /// <param name="file">The copy.</param>
    /// <param name="database">The database.</param>
    /// <param name="force">Replace a database that is there.</param>
    /// <exception cref="StorageException">It can't be done; the line says why, and the database is as it was.</exception>
    public static async Task RestoreAsync(string file, string database, bool force)
    {
        if (!File.Exists(file))
        {
            throw new StorageException($"{file} is not there: give the path of a backup.");
        }

        if (File.Exists(database) && !force)
        {
            throw new StorageException($"{database} is there already: add --force to replace it.");
        }

        if (File.Exists(database))
        {
            await EnsureNobodyUsesAsync(database);
        }

        await GuardedAsync(file, () => CopyAsync(file, database, replaces: true));
    }

    private static async Task GuardedAsync(string path, Func<Task> copy)
    {
        try
        {
            await copy();
        }
        catch (SqliteException fault)
        {
            throw StorageFaults.Of(fault, path);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            throw new StorageException($"{path} can't be copied: check both places and who may read and write them.", fault);
        }
    }

    // The copy is made beside its place and moved there whole: a fall leaves the old file or the new one.
    private static async Task CopyAsync(string from, string to, bool replaces)
    {
        var part = $"{Path.GetFullPath(to)}.part";
        File.Delete(part);
        DatabaseFile.Ensure(part);
        try
        {
            await using (var source = Open(from, SqliteOpenMode.ReadWrite))
            await using (var copy = Open(part, SqliteOpenMode.ReadWrite))
            {
                await Shape.CheckAsync(source, from);
                source.BackupDatabase(copy);
                await copy.RunAsync("PRAGMA journal_mode = DELETE");
                if ((await copy.AskAsync("PRAGMA integrity_check", Column.Text))[0] is not "ok" and var fault)
                {
                    throw new StorageException($"{from} is damaged ({fault}): it was not copied.");
                }
            }

            if (replaces)
            {
                // The log of the old file must never meet the new one, not even after a fall between these lines.
                File.Delete($"{to}-wal");
                File.Delete($"{to}-shm");
            }

            File.Move(part, to, overwrite: replaces);
        }
        finally
        {
            File.Delete(part);
        }
    }

    // Leaving write-ahead logging takes the file for oneself alone, which fails while anybody has it open.
    private static async Task EnsureNobodyUsesAsync(string database)
    {
        try
        {
            await using var old = Open(database, SqliteOpenMode.ReadWrite);
            await old.RunAsync("PRAGMA journal_mode = DELETE");
        }
        catch (SqliteException fault) when (fault.SqliteErrorCode is SQLitePCL.raw.SQLITE_BUSY or SQLitePCL.raw.SQLITE_LOCKED)
        {
            throw new StorageException($"{database} is in use: end the CrewBot that serves it, then restore.", fault);
        }
        catch (SqliteException)
        {
            // A damaged file is what restoring is for.
        }
    }

    private static SqliteConnection Open(string path, SqliteOpenMode mode)
    {
        var connection = new SqliteConnection(
            new SqliteConnectionStringBuilder { DataSource = path, Mode = mode, Pooling = false, DefaultTimeout = 2 }.ToString());
        connection.Open();
        return connection;
    }
}
