using CrewBot.Core.Effort;
using CrewBot.Storage.Catches;
using CrewBot.Storage.Connections;

namespace CrewBot.Chat.Learning;

/// <summary>A crew's fishing in a span of time, read from its log.</summary>
/// <param name="Log">Hours and fish.</param>
/// <param name="Forgotten">Spells that were never ended and are too old to be still down: in no rate.</param>
internal sealed record FishingRecord(EffortLog Log, int Forgotten)
{
    /// <summary>Reads it. Lines that are down now count until now.</summary>
    /// <param name="session">The crew's.</param>
    /// <param name="from">From when.</param>
    /// <param name="now">Until when.</param>
    /// <param name="waterId">In which water; null for all.</param>
    /// <param name="month">The month of any year, 1 to 12, that counts; null for all.</param>
    public static async Task<FishingRecord> ReadAsync(CrewSession session, DateTimeOffset from, DateTimeOffset now, long? waterId, int? month = null)
    {
        var effort = new EffortRepository(session);
        var spells = await effort.SpellsAsync(from, now, waterId);
        var fish = await effort.FishAsync(from, now, waterId);
        var believed = spells
            .Where(pair => !pair.IsDown || now - pair.Spell.Down <= FishedSpell.Longest)
            .Select(pair => pair.IsDown ? pair.Spell with { Up = now.ToOffset(pair.Spell.Down.Offset) } : pair.Spell)
            .Where(spell => month is null || spell.Down.Month == month)
            .Select(spell => spell.Within(from, now))
            .OfType<FishedSpell>()
            .ToList();
        return new FishingRecord(
            new EffortLog(believed, fish), spells.Count(pair => pair.IsDown && now - pair.Spell.Down > FishedSpell.Longest));
    }
}
