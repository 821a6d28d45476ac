using System.Collections.Concurrent;
using CrewBot.Chat.Commands;
using CrewBot.Core.Knowledge;
using CrewBot.Storage.Connections;
using CrewBot.Storage.Crews;
using CrewBot.Storage.Derbies;

namespace CrewBot.Chat.Derbies;

/// <summary>
/// Keeps derbies counted between one question and the next, so that each counts only what was written since. What is kept is
/// what the disk holds: it is put here after its transaction, and a change that came to nothing leaves nothing.
/// </summary>
public sealed class DerbyBoards(TradeKnowledge knowledge)
{
    // More than are fished at a time; one of 10,000 entries takes about 5 MB.
    private const int MostKept = 20;

    private readonly ConcurrentDictionary<(string Crew, long Derby), CountedBoard> _kept = new();

    /// <summary>A derby with its standings as this transaction sees them.</summary>
    internal async Task<DerbySheet> SheetAsync(CrewSession session, Derby derby, Request request)
    {
        var key = (request.Caller.Crew!, derby.Number);
        var names = await new MemberRepository(session).NamesAsync();
        var counted = await CountAsync(session, derby, names.Values.Count(name => name == MemberRepository.Former), _kept.GetValueOrDefault(key));
        session.Afterwards(() => Keep(key, counted));
        return new DerbySheet(derby with { IsClosed = counted.Board.IsClosed }, counted, names);
    }

    private async Task<CountedBoard> CountAsync(CrewSession session, Derby derby, int erased, CountedBoard? kept)
    {
        var ledger = new LedgerRepository(session);
        var (last, voided) = (await ledger.LastAsync(derby.Number), await ledger.VoidedAsync(derby.Number));

        // A transaction that began before the newest change sees less than is kept: it counts for itself.
        var start = kept is not null && kept.Board.Last <= last && kept.Erased == erased && kept.Voided.Keys.All(voided.ContainsKey)
            ? kept
            : CountedBoard.Empty(derby.Settings, knowledge, erased);
        return start.With(start.Board.Last < last ? await ledger.EventsAsync(derby.Number, start.Board.Last) : [], voided);
    }

    private void Keep((string Crew, long Derby) key, CountedBoard counted)
    {
        if (_kept.Count >= MostKept && !_kept.ContainsKey(key))
        {
            // Whatever is asked about next is counted anew.
            _kept.Clear();
        }

        _kept.AddOrUpdate(key, counted, (_, kept) => kept.Board.Last > counted.Board.Last ? kept : counted);
    }
}
