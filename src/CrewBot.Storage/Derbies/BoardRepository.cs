using CrewBot.Storage.Connections;

namespace CrewBot.Storage.Derbies;

/// <summary>Which standings are to be shown anew, and what was shown.</summary>
public sealed class BoardRepository(CrewSession session)
{
    private const string TouchSql = """
        INSERT INTO derby_board (crew_id, derby, is_stale, shown_at_ms, led_at_ms) VALUES (@CrewId, @Derby, 1, 0, 0)
        ON CONFLICT (crew_id, derby) DO UPDATE SET is_stale = 1
        """;

    private const string TouchOfCatchSql = """
        UPDATE derby_board SET is_stale = 1 WHERE crew_id = @CrewId AND derby IN
            (SELECT derby FROM derby_entry WHERE crew_id = @CrewId AND catch_number = @CatchNumber)
        """;

    private const string StaleSql = "SELECT derby FROM derby_board WHERE crew_id = @CrewId AND is_stale = 1 ORDER BY derby";

    private const string FindSql = "SELECT shown_at_ms, leader, led_at_ms FROM derby_board WHERE crew_id = @CrewId AND derby = @Derby";

    private const string ShownSql = """
        UPDATE derby_board SET is_stale = 0, shown_at_ms = @ShownAtMs, leader = @Leader, led_at_ms = @LedAtMs
        WHERE crew_id = @CrewId AND derby = @Derby
        """;

    /// <summary>Notes that the standings have changed.</summary>
    public Task TouchAsync(long derby) => session.ExecuteAsync(TouchSql, new { session.CrewId, Derby = derby });

    /// <summary>Notes that the standings have changed wherever a catch was entered.</summary>
    public Task TouchOfCatchAsync(long catchNumber) =>
        session.ExecuteAsync(TouchOfCatchSql, new { session.CrewId, CatchNumber = catchNumber });

    /// <summary>The derbies whose standings have changed since they were shown.</summary>
    public Task<IReadOnlyList<long>> StaleAsync() => session.QueryAsync<long>(StaleSql, new { session.CrewId });

    /// <summary>What was shown of a derby; null when nothing has happened in it.</summary>
    public async Task<BoardState?> FindAsync(long derby) =>
        await session.FirstOrDefaultAsync<BoardRow>(FindSql, new { session.CrewId, Derby = derby }) is { } row
            ? new BoardState(DateTimeOffset.FromUnixTimeMilliseconds(row.ShownAtMs), row.Leader, DateTimeOffset.FromUnixTimeMilliseconds(row.LedAtMs))
            : null;

    /// <summary>Notes what is shown now.</summary>
    public Task ShownAsync(long derby, BoardState state) => session.ExecuteAsync(
        ShownSql,
        new
        {
            session.CrewId,
            Derby = derby,
            ShownAtMs = state.ShownAt.ToUnixTimeMilliseconds(),
            state.Leader,
            LedAtMs = state.LedAt.ToUnixTimeMilliseconds(),
        });

    private sealed record BoardRow(long ShownAtMs, string? Leader, long LedAtMs);
}
