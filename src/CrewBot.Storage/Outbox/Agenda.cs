using System.Data.Common;
using CrewBot.Storage.Connections;
using Dapper;

namespace CrewBot.Storage.Outbox;

/// <summary>Where something is still to be said, over all crews, and nothing of what. Costs only what is still to be said.</summary>
internal static class Agenda
{
    private const string NextSql = """
        SELECT crew.key AS crew, post.place, post.next_at_ms
        FROM post JOIN crew ON crew.id = post.crew_id
        WHERE post.next_at_ms IS NOT NULL ORDER BY post.next_at_ms
        """;

    public static IReadOnlyList<PlaceDue> Read(PreparedConnection connection) =>
        [.. connection.Query(NextSql, Row.Rows).Select(row => new PlaceDue(row.Crew, row.Place, Instants.Read(row.NextAtMs)))];

    internal sealed record Row(string Crew, string Place, long NextAtMs)
    {
        public static Func<DbDataReader, Row> Rows(DbDataReader reader) => reader.GetRowParser<Row>();
    }
}
