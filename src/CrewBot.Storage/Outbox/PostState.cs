using System.Data.Common;
using CrewBot.Storage.Connections;
using Dapper;
using Microsoft.Data.Sqlite;

namespace CrewBot.Storage.Outbox;

/// <summary>What is still to be said over all crews, and nothing of what.</summary>
/// <param name="Pending">How many posts wait, reminders for later among them.</param>
/// <param name="Corrections">How many of them stand somewhere already and say something old.</param>
/// <param name="OldestDueAt">When the oldest was due; null when none is pending.</param>
/// <param name="Dead">How many were given up.</param>
/// <param name="Newest">The newest of those that were given up.</param>
public sealed record PostState(long Pending, long Corrections, DateTimeOffset? OldestDueAt, long Dead, IReadOnlyList<DeadPost> Newest)
{
    private const string CountSql = """
        SELECT COUNT(*) FILTER (WHERE next_at_ms IS NOT NULL) AS pending,
            COUNT(*) FILTER (WHERE next_at_ms IS NOT NULL AND message_id IS NOT NULL) AS corrections,
            COALESCE(MIN(due_at_ms) FILTER (WHERE next_at_ms IS NOT NULL), 0) AS oldestDueAtMs,
            COUNT(*) FILTER (WHERE next_at_ms IS NULL AND fault IS NOT NULL) AS dead
        FROM post
        """;

    private const string DeadSql = """
        SELECT crew.key AS crew, post.key, post.place, post.attempts, post.fault
        FROM post JOIN crew ON crew.id = post.crew_id
        WHERE post.next_at_ms IS NULL AND post.fault IS NOT NULL ORDER BY post.due_at_ms DESC, post.id DESC LIMIT 5
        """;

    internal static async Task<PostState> ReadAsync(SqliteConnection connection)
    {
        var counts = (await connection.AskAsync(CountSql, CountRow.Rows)).Single();
        return new PostState(
            counts.Pending, counts.Corrections, counts.Pending == 0 ? null : Instants.Read(counts.OldestDueAtMs), counts.Dead,
            counts.Dead == 0 ? [] : await connection.AskAsync(DeadSql, rows => rows.GetRowParser<DeadPost>()));
    }

    internal sealed record CountRow(long Pending, long Corrections, long OldestDueAtMs, long Dead)
    {
        public static Func<DbDataReader, CountRow> Rows(DbDataReader reader) => reader.GetRowParser<CountRow>();
    }
}
