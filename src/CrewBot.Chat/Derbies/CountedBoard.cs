using CrewBot.Core.Derbies;
using CrewBot.Core.Derbies.Ledger;
using CrewBot.Core.Knowledge;

namespace CrewBot.Chat.Derbies;

/// <summary>A derby counted up to an event of its record. It never changes: what happens next is counted on a copy.</summary>
internal sealed class CountedBoard
{
    private CountedBoard(Scoreboard board) => (Board, Standings) = (board, board.Standings());

    /// <summary>The entries and who takes part.</summary>
    public Scoreboard Board { get; }

    public Standings Standings { get; }

    /// <summary>Everything that was written, in order.</summary>
    public IReadOnlyList<LedgerEvent> Record { get; private init; } = [];

    /// <summary>Since when catches are void, by their number in the crew's log.</summary>
    public IReadOnlyDictionary<long, DateTimeOffset> Voided { get; private init; } = new Dictionary<long, DateTimeOffset>();

    /// <summary>How many people had been erased when it was counted: they take along what they said.</summary>
    public int Erased { get; private init; }

    /// <summary>A derby of which nothing is counted yet.</summary>
    public static CountedBoard Empty(DerbySettings settings, TradeKnowledge knowledge, int erased) =>
        new(new Scoreboard(settings, knowledge.Species)) { Erased = erased };

    /// <summary>The same with what was written since.</summary>
    public CountedBoard With(IReadOnlyList<LedgerEvent> written, IReadOnlyDictionary<long, DateTimeOffset> voided)
    {
        var gone = voided.Keys.Where(number => !Voided.ContainsKey(number)).ToList();
        if (written.Count == 0 && gone.Count == 0)
        {
            return this;
        }

        var board = Board.Copy();
        foreach (var next in written)
        {
            board.Apply(next);
        }

        gone.ForEach(board.Void);
        return new CountedBoard(board) { Record = [.. Record, .. written], Voided = voided, Erased = Erased };
    }
}
