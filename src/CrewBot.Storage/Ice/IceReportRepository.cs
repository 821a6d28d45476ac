using System.Data.Common;
using System.Diagnostics.CodeAnalysis;
using System.Text.Json;
using CrewBot.Core.Ice;
using CrewBot.Storage.Connections;
using Dapper;
using UnitsNet;

namespace CrewBot.Storage.Ice;

/// <summary>A crew's reports of ice. None is ever deleted: one that was wrong is corrected or withdrawn, with its reason.</summary>
public sealed class IceReportRepository(CrewSession session)
{
    internal const string Columns =
        "r.number, r.member_id, r.water_id, r.spot, r.measured_at_ms, r.filed_at_ms, r.page, r.closed_reason, r.withdrawn_reason";

    internal const string From = "FROM ice_report r JOIN member m ON m.crew_id = r.crew_id AND m.id = r.member_id";

    private const string Select = $"SELECT {Columns}, m.name AS filer {From}";

    private const string NextNumberSql = "SELECT COALESCE(MAX(number), 0) + 1 FROM ice_report WHERE crew_id = @CrewId";

    private const string AddSql = """
        INSERT INTO ice_report
            (crew_id, number, member_id, water_id, spot, spot_plain, at_ms, measured_at_ms, filed_at_ms, is_open, page, least_nm, most_nm, counts_nm)
        VALUES (
            @CrewId, @Number, @MemberId, @WaterId, @Spot, @SpotPlain, @AtMs, @MeasuredAtMs, @FiledAtMs, @IsOpen, @Page, @LeastNm, @MostNm, @CountsNm)
        """;

    private const string FindSql = $"{Select} WHERE r.crew_id = @CrewId AND r.number = @Number";

    private const string NewestSql = $"""
        {Select} WHERE r.crew_id = @CrewId AND r.water_id = @WaterId AND r.withdrawn_at_ms IS NULL
        ORDER BY r.at_ms DESC, r.number DESC LIMIT @Most
        """;

    private const string SinceSql = $"""
        {Select} WHERE r.crew_id = @CrewId AND r.water_id = @WaterId AND r.withdrawn_at_ms IS NULL AND r.at_ms >= @FromMs
        ORDER BY r.at_ms DESC, r.number DESC
        """;

    // However much bad news a water has, it has few spots: the index is asked for each of them and for its newest, and nothing is
    // counted through. The hints keep SQLite from reading all reports of the crew instead.
    private const string OpenFrom =
        "FROM ice_report INDEXED BY ice_report_open WHERE crew_id = @CrewId AND water_id = @WaterId AND is_open = 1";

    private const string OpenSpots = $"""
        WITH RECURSIVE spot(plain) AS (
            SELECT MIN(spot_plain) {OpenFrom}
            UNION ALL
            SELECT (SELECT MIN(spot_plain) {OpenFrom} AND spot_plain > spot.plain) FROM spot WHERE plain IS NOT NULL
        ), newest AS MATERIALIZED (
            SELECT plain, (SELECT MAX(at_ms) {OpenFrom} AND spot_plain = spot.plain) AS at_ms FROM spot WHERE plain IS NOT NULL
        )
        SELECT {Columns}, m.name AS filer FROM newest
        CROSS JOIN ice_report r INDEXED BY ice_report_open ON r.crew_id = @CrewId AND r.water_id = @WaterId AND r.is_open = 1 AND r.spot_plain = newest.plain
        JOIN member m ON m.crew_id = r.crew_id AND m.id = r.member_id
        """;

    // The newest of each spot blocks it as well as all of them would.
    private const string OpenSql = $"""
        {OpenSpots} WHERE r.at_ms = newest.at_ms AND newest.at_ms >= @FromMs
        ORDER BY r.at_ms DESC, r.number DESC
        """;

    private const string OpenSinceSql = $"""
        {OpenSpots} WHERE r.at_ms >= @FromMs
        ORDER BY r.at_ms DESC, r.number DESC
        """;

    private const string AtSpotSql = $"""
        {Select} WHERE r.crew_id = @CrewId AND r.water_id = @WaterId AND r.spot_plain = @SpotPlain AND r.withdrawn_at_ms IS NULL AND r.at_ms >= @FromMs
        ORDER BY r.at_ms DESC, r.number DESC
        """;

    private const string WarmSql = $"""
        {Select} WHERE r.crew_id = @CrewId AND r.water_id = @WaterId AND r.withdrawn_at_ms IS NULL AND json_extract(r.page, '$.air') >= 0
            AND r.at_ms >= @FromMs
        ORDER BY r.at_ms DESC LIMIT 1
        """;

    private const string DaySql = """
        SELECT spot_plain, MIN(least_nm) AS least_nm, MAX(most_nm) AS most_nm, MIN(counts_nm) AS counts_nm FROM ice_report
        WHERE crew_id = @CrewId AND water_id = @WaterId AND withdrawn_at_ms IS NULL AND least_nm IS NOT NULL AND at_ms >= @FromMs
        GROUP BY spot_plain
        """;

    private const string ClosedSql = $"""
        {Select} WHERE r.crew_id = @CrewId AND r.water_id = @WaterId AND r.closed_at_ms IS NOT NULL AND r.withdrawn_at_ms IS NULL AND r.at_ms >= @FromMs
        ORDER BY r.at_ms DESC, r.number DESC
        """;

    private const string ReplaceSql = """
        UPDATE ice_report SET spot = @Spot, spot_plain = @SpotPlain, at_ms = @AtMs, measured_at_ms = @MeasuredAtMs, page = @Page,
            is_open = @IsOpen, least_nm = @LeastNm, most_nm = @MostNm, counts_nm = @CountsNm, closed_by = NULL, closed_with = NULL, closed_reason = NULL, closed_at_ms = NULL
        WHERE crew_id = @CrewId AND number = @Number
        """;

    private const string RememberSql = """
        INSERT INTO ice_change (crew_id, number, at_ms, changed_by, reason, before)
        SELECT crew_id, number, @ChangedAtMs, @By, @Reason, page FROM ice_report WHERE crew_id = @CrewId AND number = @Number
        """;

    private const string WithdrawSql = """
        UPDATE ice_report SET is_open = 0, withdrawn_by = @By, withdrawn_reason = @Reason, withdrawn_at_ms = @AtMs
        WHERE crew_id = @CrewId AND number = @Number
        """;

    private const string CloseSql = """
        UPDATE ice_report SET is_open = 0, closed_by = @By, closed_with = @With, closed_reason = @Reason, closed_at_ms = @AtMs
        WHERE crew_id = @CrewId AND number = @Number
        """;

    /// <summary>Adds a report.</summary>
    /// <returns>Its number within the crew.</returns>
    public async Task<long> AddAsync(IceEntry entry)
    {
        var number = await session.SingleAsync(NextNumberSql, new { session.CrewId }, Column.Long);
        await WriteAsync(AddSql, number, entry);
        return number;
    }

    /// <summary>A report by its number, withdrawn ones too; null when there is none.</summary>
    public async Task<FiledIce?> FindAsync(long number) =>
        (await session.FirstOrDefaultAsync(FindSql, new { session.CrewId, Number = number }, IceReportRow.Rows))?.ToFiled();

    /// <summary>The newest that stand, newest first.</summary>
    public Task<IReadOnlyList<FiledIce>> NewestAsync(long waterId, int most) =>
        ReadAsync(NewestSql, new { session.CrewId, WaterId = waterId, Most = most });

    /// <summary>All that stand and were measured, or at least filed, at an instant or later, newest first.</summary>
    public Task<IReadOnlyList<FiledIce>> SinceAsync(long waterId, DateTimeOffset from) =>
        ReadAsync(SinceSql, new { session.CrewId, WaterId = waterId, FromMs = Instants.Write(from) });

    /// <summary>Bad news that nobody has closed: the newest of each spot.</summary>
    public Task<IReadOnlyList<FiledIce>> OpenAsync(long waterId, DateTimeOffset from) =>
        ReadAsync(OpenSql, new { session.CrewId, WaterId = waterId, FromMs = Instants.Write(from) });

    /// <summary>Bad news since an instant that nobody has closed, all of it, newest first.</summary>
    public Task<IReadOnlyList<FiledIce>> OpenSinceAsync(long waterId, DateTimeOffset from) =>
        ReadAsync(OpenSinceSql, new { session.CrewId, WaterId = waterId, FromMs = Instants.Write(from) });

    /// <summary>What stands of one spot since an instant, newest first.</summary>
    public Task<IReadOnlyList<FiledIce>> AtSpotAsync(long waterId, string spot, DateTimeOffset from) => ReadAsync(
        AtSpotSql, new { session.CrewId, WaterId = waterId, SpotPlain = SpotName.Plain(spot), FromMs = Instants.Write(from) });

    /// <summary>The newest report since an instant that tells of air at or above the freezing point; null when none does.</summary>
    public async Task<FiledIce?> NewestWarmAsync(long waterId, DateTimeOffset from) =>
        (await session.FirstOrDefaultAsync(WarmSql, new { session.CrewId, WaterId = waterId, FromMs = Instants.Write(from) }, IceReportRow.Rows))?.ToFiled();

    /// <summary>What the measurements since an instant come to, spot by spot; those that support no answer are left out.</summary>
    public async Task<IReadOnlyList<IceSpotDay>> DayAsync(long waterId, DateTimeOffset from) =>
    [
        .. (await session.QueryAsync(DaySql, new { session.CrewId, WaterId = waterId, FromMs = Instants.Write(from) }, DayRow.Rows)).Select(row => row.ToDay()),
    ];

    /// <summary>Bad news since an instant that a steward has closed, newest first.</summary>
    public Task<IReadOnlyList<FiledIce>> ClosedAsync(long waterId, DateTimeOffset from) =>
        ReadAsync(ClosedSql, new { session.CrewId, WaterId = waterId, FromMs = Instants.Write(from) });

    /// <summary>Puts something else in a report's place, and keeps what it said. Closed bad news is to be closed anew.</summary>
    public async Task ReplaceAsync(long number, IceEntry entry, long by, string reason, DateTimeOffset at)
    {
        await session.ExecuteAsync(RememberSql, new { session.CrewId, Number = number, ChangedAtMs = Instants.Write(at), By = by, Reason = reason });
        await WriteAsync(ReplaceSql, number, entry);
    }

    /// <summary>Takes a report back.</summary>
    public Task WithdrawAsync(long number, long by, string reason, DateTimeOffset at) => session.ExecuteAsync(
        WithdrawSql, new { session.CrewId, Number = number, By = by, Reason = reason, AtMs = Instants.Write(at) });

    /// <summary>Closes bad news.</summary>
    /// <param name="number">The report.</param>
    /// <param name="with">The new measurement that closes it.</param>
    /// <param name="by">The steward.</param>
    /// <param name="reason">Why.</param>
    /// <param name="at">When.</param>
    public Task CloseAsync(long number, long with, long by, string reason, DateTimeOffset at) => session.ExecuteAsync(
        CloseSql, new { session.CrewId, Number = number, With = with, By = by, Reason = reason, AtMs = Instants.Write(at) });

    private async Task<IReadOnlyList<FiledIce>> ReadAsync<[DynamicallyAccessedMembers(ParameterObject.Kept)] TParameters>(string sql, TParameters parameters)
        where TParameters : class =>
        [.. (await session.QueryAsync(sql, parameters, IceReportRow.Rows)).Select(row => row.ToFiled())];

    private Task<int> WriteAsync(string sql, long number, IceEntry entry)
    {
        var report = FiledIce.ReportOf(entry);
        var holes = report.CanSupport ? report.Holes : [];
        return session.ExecuteAsync(sql, new
        {
            session.CrewId,
            Number = number,
            entry.MemberId,
            entry.WaterId,
            entry.Spot,
            SpotPlain = SpotName.Plain(entry.Spot ?? ""),
            AtMs = Instants.Write(entry.MeasuredAt ?? entry.FiledAt),
            MeasuredAtMs = entry.MeasuredAt is { } measured ? Instants.Write(measured) : (long?)null,
            FiledAtMs = Instants.Write(entry.FiledAt),
            IsOpen = report.IsBadNews,
            Page = JsonSerializer.Serialize(entry.Page, IceJson.Default.IcePage),
            LeastNm = holes.Min(hole => Nm(hole.Total)),
            MostNm = holes.Max(hole => Nm(hole.Total)),
            CountsNm = holes.Min(hole => Nm(hole.Effective)),
        });
    }

    // Null of no holes.
    private static long? Nm(Length thickness) => (long)Math.Round(thickness.Nanometers);

    internal sealed record DayRow(string SpotPlain, long LeastNm, long MostNm, long CountsNm)
    {
        public static Func<DbDataReader, DayRow> Rows(DbDataReader reader) => reader.GetRowParser<DayRow>();

        public IceSpotDay ToDay() => new(SpotPlain, Length.FromNanometers(LeastNm), Length.FromNanometers(MostNm), Length.FromNanometers(CountsNm));
    }
}
