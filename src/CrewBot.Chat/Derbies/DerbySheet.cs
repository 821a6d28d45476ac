using CrewBot.Core.Derbies;
using CrewBot.Core.Derbies.Ledger;
using CrewBot.Core.Knowledge;
using CrewBot.Storage.Connections;
using CrewBot.Storage.Crews;
using CrewBot.Storage.Derbies;

namespace CrewBot.Chat.Derbies;

/// <summary>A derby with its record read, and what everybody is called.</summary>
internal sealed record DerbySheet(Derby Derby, Scoreboard Board, IReadOnlyDictionary<long, string> Names)
{
    private Standings? _standings;

    /// <summary>Everything that was written, in order.</summary>
    public IReadOnlyList<LedgerEvent> Record { get; init; } = [];

    /// <summary>Since when catches are void, by their number in the crew's log.</summary>
    public IReadOnlyDictionary<long, DateTimeOffset> Voided { get; init; } = new Dictionary<long, DateTimeOffset>();

    public DerbySettings Settings => Derby.Settings;

    public Standings Standings => _standings ??= Board.Standings();

    public static async Task<DerbySheet> ReadAsync(CrewSession session, Derby derby, TradeKnowledge knowledge)
    {
        var ledger = new LedgerRepository(session);
        var board = new Scoreboard(derby.Settings, knowledge.Species);
        var record = await ledger.EventsAsync(derby.Number);
        foreach (var written in record)
        {
            board.Apply(written);
        }

        var voided = await ledger.VoidedAsync(derby.Number);
        foreach (var (number, _) in voided)
        {
            board.Void(number);
        }

        return new DerbySheet(derby, board, await new MemberRepository(session).NamesAsync()) { Record = record, Voided = voided };
    }

    /// <summary>Who competes where an angler fishes: themselves, or their team; null for somebody who does not take part.</summary>
    public Competitor? CompetitorOf(long angler) =>
        Board.Anglers.Where(one => one.Angler == angler)
            .Select(one => Settings.Teams is null ? new Competitor(angler) : new Competitor(null, one.Team))
            .FirstOrDefault();

    public string NameOf(Competitor who) => who.Team ?? Names[who.Angler!.Value];
}
