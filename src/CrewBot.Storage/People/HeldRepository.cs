using System.Data.Common;
using CrewBot.Storage.Connections;
using CrewBot.Storage.Crews;

namespace CrewBot.Storage.People;

/// <summary>Everything that is held on a person, wherever it lies: shown as it is, and erased.</summary>
public sealed class HeldRepository(CrewSession session)
{
    // Answers to others may name the person: "the crew's best is 24 in, Ana".
    private const string ForgetMentionsSql =
        "UPDATE handled_request SET answer = @Answer WHERE crew_id = @CrewId AND instr(answer, @Mention) > 0";

    // Somebody else may have passed on what the person wrote.
    private const string ForgetQuotesSql = $"""
        UPDATE ice_report SET page = json_set(json_remove(page, '$.quote.link', '$.quote.text'), '$.quote.author', '{MemberRepository.Former}')
        WHERE crew_id = @CrewId AND json_extract(page, '$.quote.author') = @Name
        """;

    private const string ForgetOldQuotesSql = $"""
        UPDATE ice_change SET before = json_set(json_remove(before, '$.quote.link', '$.quote.text'), '$.quote.author', '{MemberRepository.Former}')
        WHERE crew_id = @CrewId AND json_extract(before, '$.quote.author') = @Name
        """;

    /// <summary>What every table holds on a person.</summary>
    public async Task<IReadOnlyList<HeldRows>> AllAsync(long memberId)
    {
        var held = new List<HeldRows>();
        foreach (var table in HeldTables.All)
        {
            var rows = await session.ReadAsync(table.RowsSql, new { session.CrewId, MemberId = memberId }, ByName);
            held.Add(new HeldRows(table.Name, table.Column, table.What, rows));
        }

        return held;
    }

    /// <summary>Takes away what is held on a person, everywhere at once. What they caught stays, as a former angler's.</summary>
    /// <param name="memberId">The person.</param>
    /// <param name="answer">What stands in place of their answers.</param>
    public async Task EraseAsync(long memberId, string answer)
    {
        foreach (var table in HeldTables.All.Where(table => table.EraseSql != HeldTable.StaysSql))
        {
            await session.ExecuteAsync(table.EraseSql, new { session.CrewId, MemberId = memberId, Answer = answer });
        }
    }

    /// <summary>Empties kept answers that mention somebody.</summary>
    /// <param name="mention">Their name as kept answers write it.</param>
    /// <param name="answer">What stands in place of those answers.</param>
    public Task ForgetMentionsAsync(string mention, string answer) =>
        session.ExecuteAsync(ForgetMentionsSql, new { session.CrewId, Mention = mention, Answer = answer });

    /// <summary>Takes words of somebody out of reports of ice that passed them on, and their name with them.</summary>
    public async Task ForgetQuotesAsync(string name)
    {
        await session.ExecuteAsync(ForgetQuotesSql, new { session.CrewId, Name = name });
        await session.ExecuteAsync(ForgetOldQuotesSql, new { session.CrewId, Name = name });
    }

    private static IReadOnlyDictionary<string, object?> ByName(DbDataReader row) =>
        Enumerable.Range(0, row.FieldCount).ToDictionary(row.GetName, column => row.IsDBNull(column) ? null : row.GetValue(column));
}
