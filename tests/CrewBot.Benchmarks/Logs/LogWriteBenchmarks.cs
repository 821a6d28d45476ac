using BenchmarkDotNet.Attributes;
using CrewBot.Chat.Commands;
using Microsoft.Data.Sqlite;

namespace CrewBot.Benchmarks.Logs;

/// <summary>
/// Logging in a file of 1,000,000 catches, from the parsed call to the answer that may be given because the fish is on the
/// disk, beside a bare transaction of one row into the same table, as durable.
/// </summary>
[MemoryDiagnoser, MedianColumn]
public class LogWriteBenchmarks : IAsyncDisposable
{
    public const int AtOnce = 64;
    private const long BareCrew = 78;
    private const long BareMember = ((BareCrew - 1) * GeneratedLog.Anglers) + 1;

    private static readonly Dictionary<string, string> Fish = new()
    {
        ["species"] = "walleye",
        ["depth"] = "24ft",
        ["presentation"] = "jigging-spoon",
        ["mood"] = "neutral",
        ["fate"] = "released",
    };

    private CrewDesk _desk = null!;
    private SqliteConnection _bare = null!;
    private SqliteCommand _insert = null!;
    private SqliteParameter _number = null!;
    private SqliteParameter _time = null!;
    private int _logged;

    [GlobalSetup]
    public async Task OpenAsync()
    {
        _desk = MillionCatches.DeskOver(await MillionCatches.CopyAsync("writing.db"));
        await LogOne();
        _bare = new SqliteConnection($"Data Source={await MillionCatches.CopyAsync("bare.db")};Pooling=False");
        await _bare.OpenAsync();
        _insert = _bare.CreateCommand();
        _insert.CommandText = "PRAGMA journal_mode = WAL; PRAGMA synchronous = FULL; PRAGMA foreign_keys = ON";
        await _insert.ExecuteNonQueryAsync();
        _insert.CommandText = $"""
            INSERT INTO catch_entry (crew_id, number, member_id, species, length_nm, length_unit, depth_nm, depth_unit,
                presentation, mood, kept, caught_at_ms, offset_min, logged_at_ms)
            VALUES ({BareCrew}, $number, {BareMember}, 'walleye', 571500000, 'in', 7315200000, 'ft', 'jigging-spoon', 'neutral', 0, $time, -360, $time)
            """;
        _number = _insert.Parameters.AddWithValue("$number", (long)GeneratedLog.Fish);
        _time = _insert.Parameters.AddWithValue("$time", MillionCatches.Now.ToUnixTimeMilliseconds());
    }

    [GlobalCleanup]
    public async ValueTask DisposeAsync()
    {
        await _desk.DisposeAsync();
        await _insert.DisposeAsync();
        await _bare.DisposeAsync();
        GC.SuppressFinalize(this);
    }

    [Benchmark(Baseline = true)]
    public int BareTransaction()
    {
        _number.Value = (long)_number.Value! + 1;
        _time.Value = (long)_time.Value! + 60_000;
        return _insert.ExecuteNonQuery();
    }

    [Benchmark]
    public Task<Reply> LogOne() => LogAsync(1);

    [Benchmark(OperationsPerInvoke = AtOnce)]
    public Task LogManyAtOnce() => Task.WhenAll(Enumerable.Range(0, AtOnce).Select(number => Task.Run(() => LogAsync(1 + (number % GeneratedLog.Anglers)))));

    // Each a little longer than the last, so that it is never taken for the same fish.
    private Task<Reply> LogAsync(int angler)
    {
        var eighths = 160 + (Interlocked.Increment(ref _logged) % 40);
        var options = new Dictionary<string, string>(Fish) { ["length"] = $"{eighths / 8.0:0.000}in" };
        return _desk.AnswerAsync(_desk.Call("catch log", options, MillionCatches.AnglerOf(angler)));
    }
}
