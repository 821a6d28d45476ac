using CrewBot.Core.Derbies.Ledger;
using CrewBot.Core.Derbies.Scoring;
using CrewBot.Core.Knowledge;

namespace CrewBot.Core.Derbies;

/// <summary>
/// Keeps the standings of one derby up to date, event by event: only whoever an event concerns is counted again. Reading
/// the same ledger from the start gives the same standings. Not safe for use by several threads.
/// </summary>
/// <param name="settings">The rules.</param>
/// <param name="species">What the trade knows of fish.</param>
public sealed class Scoreboard(DerbySettings settings, RecordSet<Species> species)
{
    private readonly Dictionary<long, AnglerCard> _cards = [];
    private readonly Dictionary<int, EntryState> _entries = [];
    private readonly Dictionary<Competitor, Tally> _tallies = [];
    private readonly HashSet<long> _voided = [];

    private Scoreboard(Scoreboard other, DerbySettings settings, RecordSet<Species> species)
        : this(settings, species)
    {
        _cards = other._cards.ToDictionary(card => card.Key, card => card.Value.Copy());
        _entries = new(other._entries);
        _tallies = new(other._tallies);
        _voided = [.. other._voided];
        (Last, IsClosed) = (other.Last, other.IsClosed);
    }

    /// <summary>The number of the last event that was applied; 0 for none.</summary>
    public int Last { get; private set; }

    /// <summary>A steward has closed it.</summary>
    public bool IsClosed { get; private set; }

    /// <summary>Every entry by its number.</summary>
    public IReadOnlyDictionary<int, EntryState> Entries => _entries;

    /// <summary>The anglers who take part, each with their team.</summary>
    public IEnumerable<(long Angler, string? Team)> Anglers =>
        _cards.Where(card => !card.Value.HasLeft).Select(card => (card.Key, card.Value.Team));

    /// <summary>A board of its own that says the same, so that this one can stay as it is while that one goes on.</summary>
    public Scoreboard Copy() => new(this, settings, species);

    /// <summary>Takes the next event in; one that was applied already changes nothing.</summary>
    public void Apply(LedgerEvent written)
    {
        if (written.Number <= Last)
        {
            return;
        }

        Last = written.Number;
        switch (written)
        {
            case Closed or Reopened:
                IsClosed = written is Closed;
                break;
            case Joined joined:
                Change(joined.Angler, card => (card.Team, card.HasLeft) = (joined.Team, false));
                break;
            case Left left:
                Change(left.Angler, card => card.HasLeft = true);
                break;
            case Entered entered:
                _entries.Add(entered.Entry, entered.ToState());
                Change(entered.Angler, card => card.Entries.Add(entered.Entry));
                break;
            case EntryEvent changed:
                var entry = changed.Change(_entries[changed.Entry]);
                _entries[entry.Number] = entry;
                Change(entry.Angler, _ => { });
                break;
        }
    }

    /// <summary>A catch became void in the crew's log.</summary>
    public void Void(long catchNumber)
    {
        _voided.Add(catchNumber);
        foreach (var entry in _entries.Values.Where(entry => entry.Catch == catchNumber))
        {
            Change(entry.Angler, _ => { });
        }
    }

    /// <summary>The standings as they are now.</summary>
    public Standings Standings()
    {
        var competitors = settings.Teams is null
            ? _cards.Keys.Select(angler => new Competitor(angler))
            : _cards.Values.Where(card => card.Team is not null).Select(card => new Competitor(null, card.Team)).Distinct();
        var tallies = competitors.Select(TallyOf).Where(tally => tally.Used.Count > 0).ToList();
        return new Standings(
            RankOrder.Rank(tallies, settings.Ties, settings.Ranking),
            [.. _cards.Values.SelectMany(card => BagOf(card).Out).OrderBy(gone => gone.Entry.Number)]);
    }

    /// <summary>The total of a competitor as it is now; 0 for one without a fish that counts, or nobody has heard of.</summary>
    public decimal TotalOf(Competitor who) => who.Angler is { } angler && !_cards.ContainsKey(angler) ? 0 : TallyOf(who).Total;

    private void Change(long angler, Action<AnglerCard> change)
    {
        if (!_cards.TryGetValue(angler, out var card))
        {
            _cards.Add(angler, card = new AnglerCard());
        }

        _tallies.Remove(CompetitorOf(angler, card));
        change(card);
        card.Bag = null;
        _tallies.Remove(CompetitorOf(angler, card));
    }

    private Competitor CompetitorOf(long angler, AnglerCard card) =>
        settings.Teams is null ? new Competitor(angler) : new Competitor(null, card.Team);

    private Tally TallyOf(Competitor who)
    {
        if (!_tallies.TryGetValue(who, out var tally))
        {
            tally = settings.Teams is { } teams
                ? teams.TallyOf(who, _cards.Values.Where(card => card.Team == who.Team).Select(card => BagOf(card).Counting), settings.Scoring)
                : settings.Scoring.TallyOf(who, BagOf(_cards[who.Angler!.Value]).Counting);
            _tallies.Add(who, tally);
        }

        return tally;
    }

    private (IReadOnlyList<ScoredFish> Counting, IReadOnlyList<OutEntry> Out) BagOf(AnglerCard card)
    {
        if (card.Bag is { } bag)
        {
            return bag;
        }

        var counting = new List<ScoredFish>(card.Entries.Count);
        var gone = new List<OutEntry>();
        foreach (var entry in card.Entries.Select(number => _entries[number]))
        {
            var scored = settings.Grid.Score(entry.Measured, entry.Penalty);
            var why = Eligibility.WhyOut(entry, scored, settings, _voided.Contains(entry.Catch), card.HasLeft);
            if (why is null && settings.Scoring.ValueOf(entry, scored, species) is { } value)
            {
                counting.Add(new ScoredFish(entry, scored, value));
            }
            else
            {
                gone.Add(new OutEntry(entry, why ?? OutReason.NoScore));
            }
        }

        counting.Sort(ScoredFish.Compare);
        card.Bag = (counting, gone);
        return (counting, gone);
    }
}
