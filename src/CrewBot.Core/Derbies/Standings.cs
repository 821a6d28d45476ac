using CrewBot.Core.Derbies.Ledger;
using CrewBot.Core.Knowledge;

namespace CrewBot.Core.Derbies;

/// <summary>Who stands where, and what did not count.</summary>
/// <param name="Lines">Everybody with a fish that counts, best first.</param>
/// <param name="Out">The entries that do not count, by number.</param>
public sealed record Standings(IReadOnlyList<Standing> Lines, IReadOnlyList<OutEntry> Out)
{
    /// <summary>Works the standings out from nothing else than this.</summary>
    /// <param name="settings">The rules.</param>
    /// <param name="ledger">The record, in any order; an event that is there twice counts once.</param>
    /// <param name="voided">Since when catches of the crew's log are void, by their number.</param>
    /// <param name="species">What the trade knows of fish.</param>
    /// <param name="asOf">What was written later is left out.</param>
    public static Standings Of(
        DerbySettings settings,
        IEnumerable<LedgerEvent> ledger,
        IReadOnlyDictionary<long, DateTimeOffset> voided,
        RecordSet<Species> species,
        DateTimeOffset asOf)
    {
        var board = new Scoreboard(settings, species);
        foreach (var written in ledger.Where(written => written.At <= asOf).OrderBy(written => written.Number))
        {
            board.Apply(written);
        }

        foreach (var (number, _) in voided.Where(pair => pair.Value <= asOf))
        {
            board.Void(number);
        }

        return board.Standings();
    }

    /// <summary>The line of a competitor; null while they have no fish that counts.</summary>
    public Standing? Find(Competitor who) => Lines.FirstOrDefault(line => line.Tally.Who == who);

    /// <summary>The line above a competitor's that is better; null for the leader.</summary>
    public Standing? Above(Competitor who)
    {
        var own = Find(who);
        return Lines.LastOrDefault(line => own is not null && line.Rank < own.Rank);
    }
}
