using System.Data.Common;
using CrewBot.Core.Fish;
using CrewBot.Storage.Connections;
using Dapper;

namespace CrewBot.Storage.Catches;

/// <summary>When whose lines were in the water: what catch rates are counted by.</summary>
public sealed class LineSpellRepository(CrewSession session)
{
    private const string NextSql = "SELECT COALESCE(MAX(number), 0) + 1 FROM line_spell WHERE crew_id = @CrewId";

    private const string AddSql = """
        INSERT INTO line_spell (crew_id, number, member_id, water_id, presentation, lines, down_at_ms, offset_min, mood, depth_nm, depth_unit)
        VALUES (@CrewId, @Number, @MemberId, @WaterId, @Presentation, @Lines, @DownAtMs, @OffsetMin, @Mood, @DepthNm, @DepthUnit)
        """;

    private const string OpenSql = """
        SELECT s.number, w.name AS water, s.presentation, s.lines, s.down_at_ms, s.offset_min, s.up_at_ms,
            s.mood, s.depth_nm, s.depth_unit
        FROM line_spell s LEFT JOIN water w ON w.crew_id = s.crew_id AND w.id = s.water_id
        WHERE s.crew_id = @CrewId AND s.member_id = @MemberId AND s.up_at_ms IS NULL ORDER BY s.down_at_ms, s.number
        """;

    private const string CloseSql =
        "UPDATE line_spell SET up_at_ms = @UpAtMs WHERE crew_id = @CrewId AND number = @Number AND up_at_ms IS NULL";

    /// <summary>Lets lines down; mood and depth are null when nobody said.</summary>
    /// <returns>The spell's number within the crew.</returns>
    public async Task<long> AddAsync(
        long memberId, long? waterId, string? presentation, int lines, DateTimeOffset downAt, string? mood = null, ExactLength? depth = null)
    {
        var number = await session.SingleAsync(NextSql, new { session.CrewId }, Column.Long);
        await session.ExecuteAsync(AddSql, new
        {
            session.CrewId,
            Number = number,
            MemberId = memberId,
            WaterId = waterId,
            Presentation = presentation,
            Lines = lines,
            DownAtMs = Instants.Write(downAt),
            OffsetMin = (long)downAt.Offset.TotalMinutes,
            Mood = mood,
            DepthNm = depth?.Nanometres,
            DepthUnit = StoredUnits.WordOf(depth),
        });
        return number;
    }

    /// <summary>An angler's lines that are down, the first let down first.</summary>
    public async Task<IReadOnlyList<LineSpell>> OpenOfAsync(long memberId) =>
        [.. (await session.QueryAsync(OpenSql, new { session.CrewId, MemberId = memberId }, SpellRow.Rows)).Select(Of)];

    /// <summary>Takes lines up.</summary>
    public Task CloseAsync(long number, DateTimeOffset upAt) =>
        session.ExecuteAsync(CloseSql, new { session.CrewId, Number = number, UpAtMs = Instants.Write(upAt) });

    private static LineSpell Of(SpellRow row)
    {
        var offset = TimeSpan.FromMinutes(row.OffsetMin);
        return new LineSpell(
            row.Number, row.Water, row.Presentation, (int)row.Lines, Instants.Read(row.DownAtMs).ToOffset(offset),
            row.UpAtMs is { } up ? Instants.Read(up).ToOffset(offset) : null)
        {
            Mood = row.Mood,
            Depth = StoredUnits.LengthOf(row.DepthNm, row.DepthUnit),
        };
    }

    internal sealed record SpellRow(
        long Number, string? Water, string? Presentation, long Lines, long DownAtMs, long OffsetMin, long? UpAtMs,
        string? Mood, long? DepthNm, string? DepthUnit)
    {
        public static Func<DbDataReader, SpellRow> Rows(DbDataReader reader) => reader.GetRowParser<SpellRow>();
    }
}
