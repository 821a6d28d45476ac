namespace CrewBot.Storage.Connections;

/// <summary>Finds the crews that a person has written in.</summary>
internal static class CrewsOfPerson
{
    // First answers are kept for a week; whoever wrote nothing in it goes by where they joined last.
    private const string FindSql = """
        SELECT crew.key FROM member JOIN crew ON crew.id = member.crew_id
        WHERE member.platform_id = @Person
        ORDER BY (
            SELECT max(handled_at_ms) FROM handled_request
            WHERE handled_request.crew_id = member.crew_id AND handled_request.member_id = member.id) DESC NULLS LAST, member.id DESC
        """;

    /// <summary>The keys of the crews, the one written in last first.</summary>
    public static IReadOnlyList<string> Keys(PreparedConnection connection, string person) =>
        connection.Query(FindSql, new { Person = person }, Column.Text);
}
