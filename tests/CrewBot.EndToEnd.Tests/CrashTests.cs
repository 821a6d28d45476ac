using System.Globalization;
using Microsoft.Data.Sqlite;

namespace CrewBot.EndToEnd.Tests;

/// <summary>Kills the program without warning while it logs, again and again on the same database.</summary>
/// <remarks>30 times here; set <c>CRASH_TEST_KILLS</c> for more.</remarks>
public sealed class CrashTests : IDisposable
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("crewbot-crash-");
    private readonly HashSet<long> _acknowledged = [];
    private long _sent;

    private string DatabaseFile => Path.Combine(_folder.FullName, "crew.db");

    [Fact]
    public async Task Kill_AtRandomPointsOfLogging_LosesNothingAcknowledgedAndDoublesNothing()
    {
        for (var kill = 0; kill < Kills.Count; kill++)
        {
            await LogUntilKilledAsync();
            var stored = await StoredAsync();
            Assert.Empty(_acknowledged.Except(stored));
            Assert.Distinct(stored);
        }

        Assert.True(_acknowledged.Count > Kills.Count, $"Only {_acknowledged.Count} fish were acknowledged.");
        TestContext.Current.TestOutputHelper?.WriteLine($"{Kills.Count} kills, {_acknowledged.Count} fish acknowledged, none lost, none doubled");
    }

    public void Dispose() => _folder.Delete(recursive: true);

    // Every fish has a note of its own, by which it is known again; a room answers in the order it is asked.
    private async Task LogUntilKilledAsync()
    {
        using var room = Worker.Start(new WorkerCall { Environment = new Dictionary<string, string> { ["CREWBOT_DATABASE"] = DatabaseFile } });
        var killAfter = Random.Shared.Next(1, 60);
        var first = _sent + 1;
        var feeding = Task.Run(async () =>
        {
            try
            {
                while (true)
                {
                    await room.StandardInput.WriteLineAsync(
                        string.Create(CultureInfo.InvariantCulture, $"catch log species:walleye note:{++_sent} confirm:yes"));
                    await room.StandardInput.FlushAsync();
                }
            }
            catch (IOException)
            {
                // The room is gone, as it should be.
            }
        });

        var answered = 0;
        while (await room.StandardOutput.ReadLineAsync(TestContext.Current.CancellationToken) is { } line)
        {
            if (!line.StartsWith("Walleye: logged as #", StringComparison.Ordinal))
            {
                continue;
            }

            _acknowledged.Add(first + answered);
            if (++answered == killAfter)
            {
                room.Kill(); // SIGKILL; what had been answered by then is still read to its end
            }
        }

        await room.WaitForExitAsync(TestContext.Current.CancellationToken);
        await feeding;
        Assert.True(answered >= killAfter, await room.StandardError.ReadToEndAsync(TestContext.Current.CancellationToken));
    }

    private async Task<List<long>> StoredAsync()
    {
        await using var connection = new SqliteConnection($"Data Source={DatabaseFile};Pooling=False");
        await connection.OpenAsync(TestContext.Current.CancellationToken);
        await using var check = connection.CreateCommand();
        check.CommandText = "PRAGMA integrity_check";
        Assert.Equal("ok", await check.ExecuteScalarAsync(TestContext.Current.CancellationToken));
        await using var select = connection.CreateCommand();
        select.CommandText = "SELECT CAST(note AS INTEGER) FROM catch_entry";
        await using var rows = await select.ExecuteReaderAsync(TestContext.Current.CancellationToken);
        var notes = new List<long>();
        while (await rows.ReadAsync(TestContext.Current.CancellationToken))
        {
            notes.Add(rows.GetInt64(0));
        }

        return notes;
    }
}
