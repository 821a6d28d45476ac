using System.Globalization;
using CrewBot.Storage.Connections;
using DbUp;
using DbUp.Engine;
using DbUp.Sqlite.Helpers;
using Microsoft.Data.Sqlite;

namespace CrewBot.Storage.Schema;

/// <summary>The shape of the database: numbered scripts, each applied once, in its own transaction, never backwards.</summary>
internal static class Shape
{
    // "Crew" in ASCII, so that another program's database is not taken for ours.
    private const int OurFile = 0x43726577;

    private static readonly SqlScript[] Scripts = ReadScripts();

    /// <summary>The number of the newest script.</summary>
    public static int Newest => Scripts.Length;

    /// <summary>Brings a database to the newest shape.</summary>
    /// <exception cref="StorageException">It belongs to another program or to a newer CrewBot.</exception>
    public static async Task BringUpAsync(SqliteConnection connection, string path)
    {
        var at = await CheckAsync(connection, path);
        if (at < Newest)
        {
            await BringUpAsync(connection, path, Newest);
        }
    }

    /// <summary>Brings a database to some shape, for tests that start from an old one.</summary>
    internal static async Task BringUpAsync(SqliteConnection connection, string path, int to)
    {
        // Two processes may start at once on the same file: whoever comes second finds a script applied and goes on from there.
        for (var attempts = Newest + 2; await CheckAsync(connection, path) < to; attempts--)
        {
            var upgrade = DeployChanges.To
                .SqliteDatabase(new SharedConnection(connection))
                .WithScripts(Scripts[..to])
                .WithTransactionPerScript()
                .WithVariablesDisabled()
                .LogToNowhere()
                .Build()
                .PerformUpgrade();
            if (!upgrade.Successful && attempts == 0)
            {
                throw upgrade.Error is SqliteException fault && StorageFaults.IsOutside(fault)
                    ? StorageFaults.Of(fault, path)
                    : new StorageException($"{path} can't be brought to this version's shape: {upgrade.Error.Message}", upgrade.Error);
            }
        }
    }

    /// <summary>Checks whose database it is.</summary>
    /// <returns>The number of the newest script that it has.</returns>
    /// <exception cref="StorageException">It belongs to another program or to a newer CrewBot.</exception>
    public static async Task<int> CheckAsync(SqliteConnection connection, string path)
    {
        // One view of the file: another process may be bringing it up between two questions.
        await using var view = connection.BeginTransaction(deferred: true);
        var owner = (await connection.AskAsync("PRAGMA application_id", Column.Long)).Single();
        var at = (await connection.AskAsync("PRAGMA user_version", Column.Int)).Single();
        if (owner != OurFile && (owner != 0 || at != 0 || await HoldsForeignTablesAsync(connection)))
        {
            throw new StorageException($"{path} is the database of another program: it was left as it is. Choose another file.");
        }

        return at <= Newest
            ? at
            : throw new StorageException(
                string.Create(CultureInfo.InvariantCulture,
                    $"{path} was written by a newer CrewBot (shape {at}; this one knows {Newest}): start the newer program."));
    }

    private static async Task<bool> HoldsForeignTablesAsync(SqliteConnection connection) =>
        (await connection.AskAsync(
            "SELECT 1 FROM sqlite_schema WHERE type = 'table' AND name <> 'SchemaVersions' AND name NOT LIKE 'sqlite%' LIMIT 1", Column.Long)).Count > 0;

    private static SqlScript[] ReadScripts()
    {
        var assembly = typeof(Shape).Assembly;
        return
        [
            .. assembly.GetManifestResourceNames()
                .Where(name => name.EndsWith(".sql", StringComparison.Ordinal))
                .Order(StringComparer.Ordinal)
                .Select(name =>
                {
                    using var reader = new StreamReader(assembly.GetManifestResourceStream(name)!);
                    return new SqlScript(name, reader.ReadToEnd());
                }),
        ];
    }
}
