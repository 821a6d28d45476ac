using CrewBot.Storage.Connections;
using CrewBot.Storage.Crews;

namespace CrewBot.Storage.People;

/// <summary>Everything that is held on a person, wherever it lies: shown as it is, and erased.</summary>
public sealed class HeldRepository(CrewSession session)
{
    // Answers to others may name the person: "the crew's best is 24 in, Ana".
    private const string ForgetMentionsSql =
        "UPDATE handled_request SET answer = @Answer WHERE crew_id = @CrewId AND instr(answer, @Mention) > 0";

    // What was to be said to the person alone, or was: nobody else reads it.
    private const string ForgetPostsToSql = """
        DELETE FROM post WHERE crew_id = @CrewId AND place = (SELECT '@' || platform_id FROM member WHERE crew_id = @CrewId AND id = @MemberId)
        """;

    // Somebody else may have passed on what the person wrote.
    private const string ForgetQuotesSql = $"""
        UPDATE ice_report SET page = json_set(json_remove(page, '$.quote.link', '$.quote.text'), '$.quote.author', '{MemberRepository.Former}')
        WHERE crew_id = @CrewId
            AND json_extract(page, '$.quote.author') = (SELECT name FROM member WHERE crew_id = @CrewId AND id = @MemberId)
        """;

    private const string ForgetOldQuotesSql = $"""
        UPDATE ice_change SET before = json_set(json_remove(before, '$.quote.link', '$.quote.text'), '$.quote.author', '{MemberRepository.Former}')
        WHERE crew_id = @CrewId
            AND json_extract(before, '$.quote.author') = (SELECT name FROM member WHERE crew_id = @CrewId AND id = @MemberId)
        """;

    /// <summary>What every table holds on a person.</summary>
    public async Task<IReadOnlyList<HeldRows>> AllAsync(long memberId)
    {
        var held = new List<HeldRows>();
        foreach (var table in HeldTables.All)
        {
            var rows = await session.QueryAsync<dynamic>(table.RowsSql, new { session.CrewId, MemberId = memberId });
            held.Add(new HeldRows(table.Name, table.Column, table.What, [.. rows.Cast<IDictionary<string, object?>>().Select(row => new Dictionary<string, object?>(row))]));
        }

        return held;
    }

    /// <summary>Takes away what is held on a person, everywhere at once. What they caught stays, as a former angler's.</summary>
    /// <param name="memberId">The person.</param>
    /// <param name="mention">Their name as kept answers write it.</param>
    /// <param name="answer">What stands in place of their answers, and of those that mention them.</param>
    public async Task EraseAsync(long memberId, string mention, string answer)
    {
        // While their id and name are still known.
        foreach (var forget in (string[])[ForgetPostsToSql, ForgetQuotesSql, ForgetOldQuotesSql])
        {
            await session.ExecuteAsync(forget, new { session.CrewId, MemberId = memberId });
        }

        foreach (var table in HeldTables.All.Where(table => table.EraseSql != HeldTable.StaysSql))
        {
            await session.ExecuteAsync(table.EraseSql, new { session.CrewId, MemberId = memberId, Answer = answer });
        }

        await session.ExecuteAsync(ForgetMentionsSql, new { session.CrewId, Mention = mention, Answer = answer });
    }
}
