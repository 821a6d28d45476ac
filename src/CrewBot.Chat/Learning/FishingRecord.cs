using CrewBot.Core.Effort;
using CrewBot.Storage.Catches;
using CrewBot.Storage.Connections;

namespace CrewBot.Chat.Learning;

/// <summary>A crew's fishing in a span of time, read from its log.</summary>
/// <param name="Spells">Hours with lines down.</param>
/// <param name="Fish">Fish, in those hours or not.</param>
/// <param name="Forgotten">Spells that were never ended and are too old to be still down: in no rate.</param>
internal sealed record FishingRecord(IReadOnlyList<FishedSpell> Spells, IReadOnlyList<CaughtFish> Fish, int Forgotten)
{
    /// <summary>The same, each fish with the hours that it came in.</summary>
    public EffortLog Log => field ??= new EffortLog(Spells, Fish);

    /// <summary>Reads it. Lines that are down now count until now.</summary>
    /// <param name="session">The crew's.</param>
    /// <param name="from">From when.</param>
    /// <param name="now">Until when.</param>
    /// <param name="waterId">In which water; null for all.</param>
    /// <param name="species">Key of the fish that count; null for all.</param>
    public static async Task<FishingRecord> ReadAsync(CrewSession session, DateTimeOffset from, DateTimeOffset now, long? waterId, string? species)
    {
        var effort = new EffortRepository(session);
        var spells = await effort.SpellsAsync(from, now, waterId);
        var fish = await effort.FishAsync(from, now, waterId, species);
        var believed = spells
            .Where(pair => !pair.IsDown || now - pair.Spell.Down <= FishedSpell.Longest)
            .Select(pair => pair.IsDown ? pair.Spell with { Up = now.ToOffset(pair.Spell.Down.Offset) } : pair.Spell)
            .Select(spell => spell.Within(from, now))
            .OfType<FishedSpell>()
            .ToList();
        return new FishingRecord(believed, fish, spells.Count(pair => pair.IsDown && now - pair.Spell.Down > FishedSpell.Longest));
    }
}
