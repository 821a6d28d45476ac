using CrewBot.Storage.Connections;

namespace CrewBot.Storage.Derbies;

/// <summary>The crew's derbies and their rules.</summary>
public sealed class DerbyRepository(CrewSession session)
{
    private const string NextSql = "SELECT COALESCE(MAX(number), 0) + 1 FROM derby WHERE crew_id = @CrewId";

    private const string AddSql = """
        INSERT INTO derby (crew_id, number, name, member_id, place, zone, created_at_ms, starts_at_ms, ends_at_ms, grace_ms, protest_ms,
            step_nm, step_unit, rounding, measure, factors, most, most_of_each, teams, best_members, ties, ranking, evidence,
            minimum_nm, minimum_unit, species, waters, kept, most_entries)
        VALUES (@CrewId, @Number, @Name, @MemberId, @Place, @Zone, @CreatedAtMs, @StartsAtMs, @EndsAtMs, @GraceMs, @ProtestMs,
            @StepNm, @StepUnit, @Rounding, @Measure, @Factors, @Most, @MostOfEach, @Teams, @BestMembers, @Ties, @Ranking, @Evidence,
            @MinimumNm, @MinimumUnit, @Species, @Waters, @Kept, @MostEntries)
        """;

    // Left to itself, the planner walks the whole record for either.
    private const string SelectSql = """
        SELECT d.*,
            COALESCE((SELECT e.kind = 'closed' FROM derby_event e INDEXED BY derby_event_state
                WHERE e.crew_id = d.crew_id AND e.derby = d.number AND e.kind IN ('closed', 'reopened')
                ORDER BY e.number DESC LIMIT 1), 0) AS is_closed,
            COALESCE((SELECT e.kind = 'joined' FROM derby_event e INDEXED BY derby_event_angler
                WHERE e.crew_id = d.crew_id AND e.derby = d.number AND e.kind IN ('joined', 'left') AND e.angler_id = @MemberId
                ORDER BY e.number DESC LIMIT 1), 0) AS has_joined
        FROM derby d WHERE d.crew_id = @CrewId
        """;

    private const string FindSql = SelectSql + " AND d.number = @Number";

    private const string NewestSql = SelectSql + " ORDER BY d.number DESC LIMIT @Most";

    private const string RunningSql = SelectSql + " AND d.starts_at_ms <= @AtMs AND d.ends_at_ms + d.grace_ms >= @AtMs ORDER BY d.number DESC";

    /// <summary>Stores a derby.</summary>
    /// <returns>Its number within the crew.</returns>
    public async Task<long> AddAsync(Derby derby, DateTimeOffset at)
    {
        var number = await session.SingleAsync(NextSql, new { session.CrewId }, Column.Long);
        await session.ExecuteAsync(AddSql, DerbyRow.Of(session.CrewId, number, derby, at));
        return number;
    }

    /// <summary>The derby with a number; null when there is none.</summary>
    /// <param name="number">Its number.</param>
    /// <param name="memberId">Of whom to say whether they take part.</param>
    public async Task<Derby?> FindAsync(long number, long? memberId) =>
        (await session.FirstOrDefaultAsync(FindSql, new { session.CrewId, Number = number, MemberId = memberId }, DerbyRow.Rows))?.ToDerby();

    /// <summary>The derbies in which word of a fish is taken at an instant, newest first; one that was closed early is among them.</summary>
    /// <param name="at">The instant.</param>
    /// <param name="memberId">Of whom to say whether they take part.</param>
    public async Task<IReadOnlyList<Derby>> RunningAsync(DateTimeOffset at, long? memberId) =>
    [
        .. (await session.QueryAsync(RunningSql, new { session.CrewId, AtMs = Instants.Write(at), MemberId = memberId }, DerbyRow.Rows))
            .Select(row => row.ToDerby()),
    ];

    /// <summary>The newest derbies, newest first.</summary>
    /// <param name="most">How many.</param>
    /// <param name="memberId">Of whom to say whether they take part.</param>
    public async Task<IReadOnlyList<Derby>> NewestAsync(int most, long? memberId) =>
    [
        .. (await session.QueryAsync(NewestSql, new { session.CrewId, Most = most, MemberId = memberId }, DerbyRow.Rows))
            .Select(row => row.ToDerby()),
    ];
}
