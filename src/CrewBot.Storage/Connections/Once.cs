using System.Data.Common;
using Microsoft.Data.Sqlite;

namespace CrewBot.Storage.Connections;

/// <summary>
/// Statements that are run once on a connection, without parameters. They wait for a lock as long as the connection says; asked
/// by way of the mapper as it is written at build, they would wait without end.
/// </summary>
internal static class Once
{
    public static async Task RunAsync(this SqliteConnection connection, string sql)
    {
        await using var command = CommandOf(connection, sql);
        await command.ExecuteNonQueryAsync();
    }

    /// <summary>Asks; gives every row.</summary>
    public static async Task<List<TRow>> AskAsync<TRow>(
        this SqliteConnection connection, string sql, Func<DbDataReader, Func<DbDataReader, TRow>> rows)
    {
        await using var command = CommandOf(connection, sql);
        await using var reader = await command.ExecuteReaderAsync();
        var read = rows(reader);
        var all = new List<TRow>();
        while (await reader.ReadAsync())
        {
            all.Add(read(reader));
        }

        return all;
    }

    private static SqliteCommand CommandOf(SqliteConnection connection, string sql)
    {
        var command = connection.CreateCommand();
#pragma warning disable CA2100 // Texts are constants.
        command.CommandText = sql;
#pragma warning restore CA2100
        return command;
    }
}
