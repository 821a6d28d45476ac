using CrewBot.Core.Knowledge;
using CrewBot.Core.Rigs;
using CrewBot.Storage.Catches;
using CrewBot.Storage.Connections;
using Dapper;

namespace CrewBot.Storage.Breaks;

/// <summary>The crew's break-offs.</summary>
public sealed class BreakOffRepository(CrewSession session)
{
    private const string NextSql = "SELECT COALESCE(MAX(number), 0) + 1 FROM break_off WHERE crew_id = @CrewId";

    private const string AddSql = """
        INSERT INTO break_off (crew_id, number, member_id, place, look, knot, line, test_ng, test_unit, pull_ng, pull_unit, broke_at_ms)
        VALUES (@CrewId, @Number, @MemberId, @Place, @Look, @Knot, @Line, @TestNg, @TestUnit, @PullNg, @PullUnit, @BrokeAtMs)
        """;

    private const string MeasuredSql = """
        SELECT knot, line, CAST(pull_ng AS REAL) / test_ng AS share FROM break_off
        WHERE crew_id = @CrewId AND knot IS NOT NULL AND line IS NOT NULL AND test_ng IS NOT NULL AND pull_ng IS NOT NULL
            AND voided_at_ms IS NULL
        ORDER BY number
        """;

    private const string CountSql =
        "SELECT COUNT(*) FROM break_off WHERE crew_id = @CrewId AND place = @Place AND look = @Look AND voided_at_ms IS NULL";

    private const string ReporterSql = "SELECT member_id FROM break_off WHERE crew_id = @CrewId AND number = @Number AND voided_at_ms IS NULL";

    private const string VoidSql =
        "UPDATE break_off SET voided_at_ms = @AtMs WHERE crew_id = @CrewId AND number = @Number AND voided_at_ms IS NULL";

    /// <summary>Adds a break-off.</summary>
    /// <returns>Its number within the crew.</returns>
    public async Task<long> AddAsync(BreakOff broke)
    {
        var number = await session.SingleAsync(NextSql, new { session.CrewId }, Column.Long);
        await session.ExecuteAsync(AddSql, new
        {
            session.CrewId,
            Number = number,
            broke.MemberId,
            Place = Words.Write(broke.Place),
            Look = Words.Write(broke.Look),
            broke.Knot,
            broke.Line,
            TestNg = broke.Test?.Nanograms,
            TestUnit = StoredUnits.WordOf(broke.Test),
            PullNg = broke.Pull?.Nanograms,
            PullUnit = StoredUnits.WordOf(broke.Pull),
            BrokeAtMs = Instants.Write(broke.BrokeAt),
        });
        return number;
    }

    /// <summary>The number of whoever reported a break-off; null when there is none of that number that counts.</summary>
    public Task<long?> ReporterAsync(long number) =>
        session.FirstOrDefaultAsync(ReporterSql, new { session.CrewId, Number = number }, Column.LongOrNull);

    /// <summary>Lets a break-off no longer count.</summary>
    public Task VoidAsync(long number, DateTimeOffset at) =>
        session.ExecuteAsync(VoidSql, new { session.CrewId, Number = number, AtMs = Instants.Write(at) });

    /// <summary>How often the crew has seen the same break.</summary>
    public Task<long> CountAsync(BreakPlace place, BreakLook look) =>
        session.SingleAsync(CountSql, new { session.CrewId, Place = Words.Write(place), Look = Words.Write(look) }, Column.Long);

    /// <summary>Every break at a knot whose pull was measured, the oldest first.</summary>
    public Task<IReadOnlyList<PartedKnot>> MeasuredAsync() =>
        session.QueryAsync(MeasuredSql, new { session.CrewId }, rows => rows.GetRowParser<PartedKnot>());
}
