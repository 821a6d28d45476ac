using CrewBot.Core.Derbies;
using CrewBot.Core.Derbies.Ledger;
using CrewBot.Storage.Derbies;

namespace CrewBot.Chat.Derbies;

/// <summary>A derby with its record read, and what everybody is called.</summary>
internal sealed record DerbySheet(Derby Derby, CountedBoard Counted, IReadOnlyDictionary<long, string> Names)
{
    /// <summary>The entries and who takes part.</summary>
    public Scoreboard Board => Counted.Board;

    /// <summary>Everything that was written, in order.</summary>
    public IReadOnlyList<LedgerEvent> Record => Counted.Record;

    /// <summary>Since when catches are void, by their number in the crew's log.</summary>
    public IReadOnlyDictionary<long, DateTimeOffset> Voided => Counted.Voided;

    public DerbySettings Settings => Derby.Settings;

    public Standings Standings => Counted.Standings;

    /// <summary>The last instant at which a protest is heard.</summary>
    public DateTimeOffset ProtestsUntil => Settings.Window.LastWord + Settings.ProtestTime;

    /// <summary>How many entries wait for somebody's word or a ruling.</summary>
    public int Waiting => Standings.Out.Count(gone => gone.Why is OutReason.Waiting or OutReason.Disputed or OutReason.Late);

    /// <summary>Who competes where an angler fishes: themselves, or their team; null for somebody who does not take part.</summary>
    public Competitor? CompetitorOf(long angler) =>
        Board.Anglers.Where(one => one.Angler == angler)
            .Select(one => Settings.Teams is null ? new Competitor(angler) : new Competitor(null, one.Team))
            .FirstOrDefault();

    public string NameOf(Competitor who) => who.Team ?? Names[who.Angler!.Value];
}
