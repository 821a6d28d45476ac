using CrewBot.Storage.Connections;

namespace CrewBot.Storage.Requests;

/// <summary>
/// The requests that changed something, each with its first answer: kept in the transaction of the change, so that a
/// request that is delivered again changes nothing and gets the same answer.
/// </summary>
public sealed class RequestRepository(CrewSession session)
{
    private const string FindSql =
        "SELECT answer FROM handled_request WHERE crew_id = @CrewId AND request_id = @RequestId";

    private const string RememberSql = """
        INSERT INTO handled_request (crew_id, request_id, member_id, answer, handled_at_ms)
        VALUES (@CrewId, @RequestId, @MemberId, @Answer, @HandledAtMs)
        """;

    private const string ForgetSql = "DELETE FROM handled_request WHERE crew_id = @CrewId AND handled_at_ms < @BeforeMs";

    /// <summary>How long a first answer is kept: far longer than any platform delivers again.</summary>
    public static TimeSpan Kept { get; } = TimeSpan.FromDays(7);

    /// <summary>The first answer to a request; null when it has changed nothing yet.</summary>
    public Task<string?> FindAnswerAsync(string requestId) =>
        session.FirstOrDefaultAsync(FindSql, new { session.CrewId, RequestId = requestId }, Column.Text);

    /// <summary>Keeps the first answer to a request.</summary>
    public async Task RememberAsync(string requestId, long memberId, string answer, DateTimeOffset at)
    {
        var handledAtMs = Instants.Write(at);
        await session.ExecuteAsync(
            RememberSql, new { session.CrewId, RequestId = requestId, MemberId = memberId, Answer = answer, HandledAtMs = handledAtMs });
    }

    /// <summary>Forgets the answers from before an instant.</summary>
    public Task ForgetAsync(DateTimeOffset before) =>
        session.ExecuteAsync(ForgetSql, new { session.CrewId, BeforeMs = Instants.Write(before) });
}
