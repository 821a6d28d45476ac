using CrewBot.Core.Derbies;
using CrewBot.Core.Knowledge;
using CrewBot.Storage.Connections;
using CrewBot.Storage.Crews;
using CrewBot.Storage.Derbies;

namespace CrewBot.Chat.Derbies;

/// <summary>A derby with its record read, and what everybody is called.</summary>
internal sealed record DerbySheet(Derby Derby, Scoreboard Board, IReadOnlyDictionary<long, string> Names)
{
    private Standings? _standings;

    public DerbySettings Settings => Derby.Settings;

    public Standings Standings => _standings ??= Board.Standings();

    public static async Task<DerbySheet> ReadAsync(CrewSession session, Derby derby, TradeKnowledge knowledge)
    {
        var ledger = new LedgerRepository(session);
        var board = new Scoreboard(derby.Settings, knowledge.Species);
        foreach (var written in await ledger.EventsAsync(derby.Number))
        {
            board.Apply(written);
        }

        foreach (var (number, _) in await ledger.VoidedAsync(derby.Number))
        {
            board.Void(number);
        }

        return new DerbySheet(derby, board, await new MemberRepository(session).NamesAsync());
    }

    /// <summary>Who competes where an angler fishes: themselves, or their team; null for somebody who does not take part.</summary>
    public Competitor? CompetitorOf(long angler) =>
        Board.Anglers.Where(one => one.Angler == angler)
            .Select(one => Settings.Teams is null ? new Competitor(angler) : new Competitor(null, one.Team))
            .FirstOrDefault();

    public string NameOf(Competitor who) => who.Team ?? Names[who.Angler!.Value];
}
