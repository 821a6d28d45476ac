using CrewBot.Storage.Connections;
using Dapper;
using Microsoft.Data.Sqlite;

namespace CrewBot.Benchmarks.Logs;

/// <summary>A database with 1,000,000 catches in 200 crews, made once for each shape of the tables and used again.</summary>
internal static class MillionCatches
{
    private const int Crews = 200;

    /// <summary>When its anglers ask: after the last of its winters.</summary>
    public static readonly DateTimeOffset Now = new(2027, 3, 15, 18, 0, 0, TimeSpan.Zero);

    private static readonly string Folder = Directory.CreateDirectory(Path.Combine(Path.GetTempPath(), "crewbot-benchmarks")).FullName;

    /// <summary>The commands over a file of them, asked by one of its crews.</summary>
    public static CrewDesk DeskOver(string file) => new(file, KeyOf(77), Now);

    /// <summary>The key of a crew, counted from 1.</summary>
    public static string KeyOf(int crew) => $"crew-{crew}";

    /// <summary>The platform's id of an angler, counted from 1; the same in every crew.</summary>
    public static string AnglerOf(int angler) => $"angler-{angler}";

    /// <summary>The file; nobody writes to it.</summary>
    public static async Task<string> FileAsync()
    {
        var making = Path.Combine(Folder, "making.db");
        Delete(making);
        await using var database = await Database.OpenAsync(making, CancellationToken.None);
        await using var connection = new SqliteConnection($"Data Source={making};Pooling=False");
        var file = Path.Combine(Folder, $"million-{await connection.ExecuteScalarAsync<long>("PRAGMA user_version")}.db");
        if (!File.Exists(file))
        {
            for (var crew = 1; crew <= Crews; crew++)
            {
                await database.WriteAsync(KeyOf(crew), new GeneratedLog(crew).WriteAsync, CancellationToken.None);
            }

            await database.DisposeAsync();
            await connection.ExecuteAsync("PRAGMA wal_checkpoint(TRUNCATE)");
            await connection.CloseAsync();
            File.Move(making, file);
        }

        Console.WriteLine($"{file}: {(double)new FileInfo(file).Length / (Crews * GeneratedLog.Fish):0.0} bytes a catch");
        return file;
    }

    /// <summary>A copy that may be written to.</summary>
    public static async Task<string> CopyAsync(string name)
    {
        var copy = Path.Combine(Folder, name);
        Delete(copy);
        File.Copy(await FileAsync(), copy);
        return copy;
    }

    private static void Delete(string file)
    {
        foreach (var part in (string[])[file, $"{file}-wal", $"{file}-shm"])
        {
            File.Delete(part);
        }
    }
}
