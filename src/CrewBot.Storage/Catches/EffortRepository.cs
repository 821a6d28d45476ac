using System.Data.Common;
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
            AND (@Species IS NULL OR species = @Species) AND voided_at_ms IS NULL
        """;

    /// <summary>Spells that reach into a span of time, the first let down first; those still down have no end.</summary>
    /// <param name="from">From when.</param>
    /// <param name="to">Until when.</param>
    /// <param name="waterId">In which water; null for all.</param>
    public Task<IReadOnlyList<(FishedSpell Spell, bool IsDown)>> SpellsAsync(DateTimeOffset from, DateTimeOffset to, long? waterId) => session.ReadAsync(
        SpellsSql,
        new { session.CrewId, FromMs = Instants.Write(from), ToMs = Instants.Write(to), WaterId = waterId },
        SpellOf);

    /// <summary>Fish of a span of time that count, in no order; in a water, those too of which nobody said where.</summary>
    /// <param name="from">From when.</param>
    /// <param name="to">Until when.</param>
    /// <param name="waterId">In which water; null for all.</param>
    /// <param name="species">Key of the species; null for all.</param>
    public Task<IReadOnlyList<CaughtFish>> FishAsync(DateTimeOffset from, DateTimeOffset to, long? waterId, string? species) => session.ReadAsync(
        FishSql,
        new { session.CrewId, FromMs = Instants.Write(from), ToMs = Instants.Write(to), WaterId = waterId, Species = species },
        row => new CaughtFish(row.GetInt64(0), row.GetString(1), row.IsDBNull(2) ? null : row.GetString(2), Instants.Read(row.GetInt64(3))));

    private static (FishedSpell Spell, bool IsDown) SpellOf(DbDataReader row)
    {
        var offset = TimeSpan.FromMinutes(row.GetInt64(6));
        var down = Instants.Read(row.GetInt64(5)).ToOffset(offset);
        var isDown = row.IsDBNull(7);
        var spell = new FishedSpell
        {
            Angler = row.GetInt64(0),
            Lines = row.GetInt32(4),
            Down = down,
            Up = isDown ? down : Instants.Read(row.GetInt64(7)).ToOffset(offset),
            Presentation = row.IsDBNull(1) ? null : row.GetString(1),
            Mood = row.IsDBNull(2) ? null : Words.Read<Mood>(row.GetString(2)),
            Depth = row.IsDBNull(3) ? null : Length.FromNanometers(row.GetInt64(3)),
        };
        return (spell, isDown);
    }
}
