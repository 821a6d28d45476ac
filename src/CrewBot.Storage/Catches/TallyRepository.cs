using System.Data.Common;
using CrewBot.Storage.Connections;
using CrewBot.Storage.Crews;
using UnitsNet.Units;

namespace CrewBot.Storage.Catches;

/// <summary>
/// What boards are read from. A season's tallies are kept with every fish, so that a board costs a row an angler and species
/// however many fish there are; those of another span of time are counted from its fish.
/// </summary>
public sealed class TallyRepository(CrewSession session)
{
    private const string SeasonOfFish = "CAST(strftime('%Y', c.caught_at_ms / 1000 + c.offset_min * 60, 'unixepoch', '-6 months') AS INTEGER)";

    private const string AddSql = """
        INSERT INTO catch_tally (crew_id, species, season, member_id, fish, total_nm, longest_nm, longest_at_ms, longest)
        VALUES (@CrewId, @Species, @Season, @MemberId, 1, COALESCE(@LengthNm, 0), @LengthNm, @AtMs, @Longest)
        ON CONFLICT (crew_id, species, member_id, season) DO UPDATE SET fish = fish + 1, total_nm = total_nm + excluded.total_nm
        """;

    // Apart from the count, so that a fish that is not the longest touches no index.
    private const string OutdoSql = """
        UPDATE catch_tally SET longest_nm = @LengthNm, longest_at_ms = @AtMs, longest = @Longest
        WHERE crew_id = @CrewId AND species = @Species AND season = @Season AND member_id = @MemberId
            AND (longest_nm IS NULL OR longest_nm < @LengthNm
                OR (longest_nm = @LengthNm AND (longest_at_ms, longest) > (@AtMs, @Longest)))
        """;

    private const string ForgetSql =
        "DELETE FROM catch_tally WHERE crew_id = @CrewId AND species = @Species AND season = @Season AND member_id = @MemberId";

    private const string CountSql = $"""
        INSERT INTO catch_tally (crew_id, species, season, member_id, fish, total_nm, longest_nm, longest_at_ms, longest)
        SELECT @CrewId, @Species, @Season, @MemberId, COUNT(*), COALESCE(SUM(length_nm), 0), MAX(length_nm),
            MAX(CASE WHEN place = 1 AND length_nm IS NOT NULL THEN caught_at_ms END), MAX(CASE WHEN place = 1 AND length_nm IS NOT NULL THEN number END)
        FROM (
            SELECT c.length_nm, c.caught_at_ms, c.number, ROW_NUMBER() OVER (ORDER BY c.length_nm DESC NULLS LAST, c.caught_at_ms, c.number) AS place
            FROM catch_entry c
            WHERE c.crew_id = @CrewId AND c.member_id = @MemberId AND c.species = @Species AND c.voided_at_ms IS NULL AND {SeasonOfFish} = @Season)
        HAVING COUNT(*) > 0
        """;

    // Added up here: reading every season of every angler takes longer. The key brings seasons in turn and MAX keeps the first of
    // equals, so that of two fish as long the earlier stands.
    private const string OfSeasonOfFish = """
        SELECT member_id, species, SUM(fish) AS fish, SUM(total_nm) AS total_nm, MAX(longest_nm) AS longest_nm, longest
        FROM catch_tally
        WHERE crew_id = @CrewId AND (@Season IS NULL OR season = @Season)
        GROUP BY species, member_id
        """;

    private const string BetweenSql = """
        SELECT member_id, species, 1 AS fish, COALESCE(length_nm, 0) AS total_nm, length_nm AS longest_nm, number AS longest
        FROM catch_entry
        WHERE crew_id = @CrewId AND caught_at_ms BETWEEN @FromMs AND @ToMs AND (@WaterId IS NULL OR water_id = @WaterId) AND voided_at_ms IS NULL
        ORDER BY caught_at_ms, number
        """;

    private const string WeighedSql = """
        SELECT number, member_id, species, length_nm, weight_ng
        FROM catch_entry INDEXED BY catch_entry_weighed
        WHERE crew_id = @CrewId AND caught_at_ms BETWEEN @FromMs AND @ToMs AND (@WaterId IS NULL OR water_id = @WaterId)
            AND weight_ng IS NOT NULL AND length_nm IS NOT NULL AND voided_at_ms IS NULL
        """;

    // One view of the crew: they are asked for once.
    private IReadOnlyDictionary<long, string>? _names;

    /// <summary>What everybody caught in a season, in no order.</summary>
    /// <param name="season">The year that the season starts in; null for all of them together.</param>
    public async Task<IReadOnlyList<CatchTally>> OfSeasonAsync(int? season)
    {
        var names = await NamesAsync();
        return await session.ReadAsync(OfSeasonOfFish, new { session.CrewId, Season = season }, row => Tally(row, names));
    }

    /// <summary>What everybody caught in a span of time, both ends included, in no order.</summary>
    /// <param name="from">From when.</param>
    /// <param name="to">Until when.</param>
    /// <param name="waterId">In which water; null for all.</param>
    public async Task<IReadOnlyList<CatchTally>> BetweenAsync(DateTimeOffset from, DateTimeOffset to, long? waterId)
    {
        var names = await NamesAsync();
        return Together(await SpanAsync(BetweenSql, from, to, waterId, row => Tally(row, names)));
    }

    /// <summary>Fish of a span of time that were measured and weighed, in no order.</summary>
    /// <param name="from">From when.</param>
    /// <param name="to">Until when.</param>
    /// <param name="waterId">In which water; null for all.</param>
    public async Task<IReadOnlyList<WeighedFish>> WeighedAsync(DateTimeOffset from, DateTimeOffset to, long? waterId)
    {
        var names = await NamesAsync();
        return await SpanAsync(WeighedSql, from, to, waterId, row => new WeighedFish(
            row.GetInt64(0), names[row.GetInt64(1)], row.GetString(2), new(row.GetInt64(3), LengthUnit.Millimeter), new(row.GetInt64(4), MassUnit.Gram)));
    }

    /// <summary>Counts a fish that was added.</summary>
    internal async Task AddAsync(long number, CatchEntry entry)
    {
        var tally = new
        {
            session.CrewId,
            entry.Species,
            Season = Season.Of(entry.CaughtAt),
            entry.MemberId,
            LengthNm = entry.Length?.Nanometres,
            AtMs = entry.Length is null ? (long?)null : Instants.Write(entry.CaughtAt),
            Longest = entry.Length is null ? (long?)null : number,
        };
        await session.ExecuteAsync(AddSql, tally);
        if (entry.Length is not null)
        {
            await session.ExecuteAsync(OutdoSql, tally);
        }
    }

    /// <summary>Counts anew what a fish that was changed or let go of counted in.</summary>
    internal async Task CountAsync(CatchEntry entry)
    {
        var tally = new { session.CrewId, entry.Species, Season = Season.Of(entry.CaughtAt), entry.MemberId };
        await session.ExecuteAsync(ForgetSql, tally);
        await session.ExecuteAsync(CountSql, tally);
    }

    private async Task<IReadOnlyDictionary<long, string>> NamesAsync() => _names ??= await new MemberRepository(session).NamesAsync();

    private static List<CatchTally> Together(IEnumerable<CatchTally> tallies) =>
    [
        .. tallies.GroupBy(tally => (tally.MemberId, tally.Species)).Select(parts =>
        {
            var longest = parts.MaxBy(part => part.LongestNm ?? 0)!;
            return longest with { Fish = parts.Sum(part => part.Fish), TotalNm = parts.Sum(part => part.TotalNm) };
        }),
    ];

    private static CatchTally Tally(DbDataReader row, IReadOnlyDictionary<long, string> names) => new(
        row.GetInt64(0), names[row.GetInt64(0)], row.GetString(1), row.GetInt64(2), row.GetInt64(3),
        row.IsDBNull(4) ? null : row.GetInt64(4), row.IsDBNull(4) ? null : row.GetInt64(5));

    private Task<IReadOnlyList<T>> SpanAsync<T>(
        string sql, DateTimeOffset from, DateTimeOffset to, long? waterId, Func<DbDataReader, T> read) => session.ReadAsync(
        sql, new { session.CrewId, FromMs = Instants.Write(from), ToMs = Instants.Write(to), WaterId = waterId }, read);
}
