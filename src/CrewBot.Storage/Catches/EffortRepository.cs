using CrewBot.Core.Effort;
using CrewBot.Core.Knowledge;
using CrewBot.Storage.Connections;
using UnitsNet;

namespace CrewBot.Storage.Catches;

/// <summary>What catch rates are counted from: hours and fish, without what they don't need.</summary>
public sealed class EffortRepository(CrewSession session)
{
    private const string SpellsSql = """
        SELECT member_id, presentation, mood, depth_nm, lines, down_at_ms, offset_min, up_at_ms FROM line_spell
        WHERE crew_id = @CrewId AND down_at_ms <= @ToMs AND (up_at_ms IS NULL OR up_at_ms >= @FromMs)
            AND (@WaterId IS NULL OR water_id = @WaterId)
        ORDER BY down_at_ms, number
        """;

    private const string FishSql = """
        SELECT member_id, species, presentation, caught_at_ms FROM catch_entry
        WHERE crew_id = @CrewId AND caught_at_ms BETWEEN @FromMs AND @ToMs AND (@WaterId IS NULL OR water_id IS NULL OR water_id = @WaterId)
            AND voided_at_ms IS NULL
        """;

    /// <summary>Spells that reach into a span of time, the first let down first; those still down have no end.</summary>
    /// <param name="from">From when.</param>
    /// <param name="to">Until when.</param>
    /// <param name="waterId">In which water; null for all.</param>
    public async Task<IReadOnlyList<(FishedSpell Spell, bool IsDown)>> SpellsAsync(DateTimeOffset from, DateTimeOffset to, long? waterId) =>
        [.. (await session.QueryAsync<SpellRow>(SpellsSql, Span(from, to, waterId))).Select(Of)];

    /// <summary>Fish of a span of time that count, in no order; in a water, those too of which nobody said where.</summary>
    /// <param name="from">From when.</param>
    /// <param name="to">Until when.</param>
    /// <param name="waterId">In which water; null for all.</param>
    public Task<IReadOnlyList<CaughtFish>> FishAsync(DateTimeOffset from, DateTimeOffset to, long? waterId) => session.QueryAsync(
        FishSql,
        Span(from, to, waterId),
        row => new CaughtFish(row.GetInt64(0), row.GetString(1), row.IsDBNull(2) ? null : row.GetString(2), Instants.Read(row.GetInt64(3))));

    private object Span(DateTimeOffset from, DateTimeOffset to, long? waterId) =>
        new { session.CrewId, FromMs = from.ToUnixTimeMilliseconds(), ToMs = to.ToUnixTimeMilliseconds(), WaterId = waterId };

    private static (FishedSpell Spell, bool IsDown) Of(SpellRow row)
    {
        var offset = TimeSpan.FromMinutes(row.OffsetMin);
        var down = DateTimeOffset.FromUnixTimeMilliseconds(row.DownAtMs).ToOffset(offset);
        var spell = new FishedSpell
        {
            Angler = row.MemberId,
            Lines = (int)row.Lines,
            Down = down,
            Up = row.UpAtMs is { } up ? DateTimeOffset.FromUnixTimeMilliseconds(up).ToOffset(offset) : down,
            Presentation = row.Presentation,
            Mood = Words.Read<Mood>(row.Mood),
            Depth = row.DepthNm is { } depth ? Length.FromNanometers(depth) : null,
        };
        return (spell, row.UpAtMs is null);
    }

    private sealed record SpellRow(
        long MemberId, string? Presentation, string? Mood, long? DepthNm, long Lines, long DownAtMs, long OffsetMin, long? UpAtMs);
}
