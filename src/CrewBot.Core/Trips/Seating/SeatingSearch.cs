namespace CrewBot.Core.Trips.Seating;

/// <summary>
/// Branch and bound: first which shelters come, the largest first, which puts their owners in place; then block by
/// block who sits in them. A branch that can't beat the best seating so far is left.
/// </summary>
internal sealed class SeatingSearch
{
    // What a branch costs beside the places it looks at, in such places: measured, rounded.
    private const long PerBranch = 64;

    private readonly SeatingModel _model;
    private readonly long _effort;
    private readonly SeatedBlocks _seated;
    private readonly bool?[] _comes;
    private readonly int[] _shelters;
    private readonly int[] _blocks;
    private readonly SeatingSymmetry _symmetry;
    private readonly RestBound _rest;
    private long _bestCost = SeatingBound.Impossible;
    private long _floor = SeatingBound.Impossible;
    private long _looked;
    private int _coming;

    /// <param name="model">The question.</param>
    /// <param name="effort">How many places are looked at before the search gives up proving.</param>
    public SeatingSearch(SeatingModel model, long effort)
    {
        _model = model;
        _effort = effort;
        _seated = new SeatedBlocks(model);
        _comes = new bool?[model.Seats.Length];
        _shelters = [.. Enumerable.Range(0, model.Seats.Length).OrderByDescending(shelter => model.Seats[shelter])];
        _blocks = SeatingOrder.Of([.. Enumerable.Range(0, model.Size.Length)], _seated);
        _symmetry = new SeatingSymmetry(model, _shelters);
        _rest = new RestBound(_seated, MaySit);
        _rest.Order(_blocks);
    }

    /// <summary>The shelter of each block in the best seating; null when none was found.</summary>
    public int[]? Best { get; private set; }

    /// <summary>Was every seating looked at, or ruled out?</summary>
    public bool IsComplete => _looked < _effort || _bestCost == _floor;

    /// <summary>No seating weighs less.</summary>
    public long Floor => IsComplete ? _bestCost : _floor;

    private bool IsOver => _looked >= _effort || _bestCost == _floor;

    /// <summary>Searches, from a seating that is known already, if there is one.</summary>
    public void Run(int[]? known)
    {
        _floor = FloorOf();
        if (_floor == SeatingBound.Impossible)
        {
            return;
        }

        if (known is not null)
        {
            Best = known;
            _bestCost = SeatedBlocks.Of(_model, known).Cost();
        }

        Decide(0);
    }

    private long FloorOf()
    {
        var shelters = SeatingBound.SheltersFor(_model.Size.Sum(), _model, _shelters);
        var rest = shelters == SeatingBound.Impossible ? shelters : _rest.Of(_blocks);

        // A wish that no seating meets may stand in both bounds, so they are not added up.
        return rest == SeatingBound.Impossible
            ? rest
            : Math.Max(
                _model.Weigh(0, SeatingBound.HopelessWishes(_model), 0, (int)shelters),
                _model.Weigh(0, _model.AlwaysUnmet, 0, (int)shelters) + rest);
    }

    private void Decide(int next)
    {
        if (IsOver || BoundFrom(next) >= _bestCost)
        {
            return;
        }

        if (next == _shelters.Length)
        {
            SeatRest();
            return;
        }

        var shelter = _shelters[next];
        if (!_symmetry.StaysWithItsLike(shelter, _comes))
        {
            Bring(shelter, next);
        }

        _comes[shelter] = false;
        Decide(next + 1);
        _comes[shelter] = null;
    }

    private void Bring(int shelter, int next)
    {
        var owner = _model.Owner[shelter];
        var ownerSits = owner >= 0 && _model.Own[owner].Length == 1;
        if (ownerSits && _model.Size[owner] > _model.Seats[shelter])
        {
            return;
        }

        _comes[shelter] = true;
        _coming++;
        if (ownerSits)
        {
            _seated.Place(owner, shelter);
        }

        Decide(next + 1);
        if (ownerSits)
        {
            _seated.Take(owner);
        }

        _coming--;
        _comes[shelter] = null;
    }

    private long BoundFrom(int next)
    {
        var standing = Array.FindAll(_blocks, block => _seated.At[block] == SeatedBlocks.Nowhere);
        var seats = 0;
        foreach (var shelter in _shelters.AsSpan(0, next))
        {
            seats += _comes[shelter] == true ? _seated.Free[shelter] : 0;
        }

        var more = SeatingBound.SheltersFor(standing.Sum(block => _model.Size[block]) - seats, _model, _shelters.AsSpan(next));
        return more == SeatingBound.Impossible ? more : BoundOf(standing, more);
    }

    private void SeatRest()
    {
        var standing = Array.FindAll(_blocks, block => _seated.At[block] == SeatedBlocks.Nowhere);
        var choosy = SeatingOrder.Of(Array.FindAll(standing, block => !_symmetry.IsPlain[block]), _seated);
        _rest.Order(choosy);
        var like = new int[choosy.Length];
        for (var next = 0; next < choosy.Length; next++)
        {
            like[next] = next == 0 ? -1 : Array.FindLastIndex(choosy, next - 1, other => _symmetry.Kind[other] == _symmetry.Kind[choosy[next]]);
        }

        Seat(choosy, like, Array.FindAll(standing, block => _symmetry.IsPlain[block]), 0);
        _rest.Order(_blocks);
    }

    private void Seat(int[] choosy, int[] like, int[] plain, int next)
    {
        if (IsOver)
        {
            return;
        }

        if (next == choosy.Length)
        {
            Finish(plain);
            return;
        }

        var bound = BoundOf(choosy.AsSpan(next), more: 0);
        if (bound >= _bestCost)
        {
            return;
        }

        var block = choosy[next];
        var least = like[next] < 0 ? 0 : _symmetry.Rank[_seated.At[choosy[like[next]]]];
        var (choices, bounds) = ChoicesFor(block, least, bound);
        for (var choice = 0; choice < choices.Length && bounds[choice].Bound < _bestCost; choice++)
        {
            _seated.Place(block, choices[choice]);
            Seat(choosy, like, plain, next + 1);
            _seated.Take(block);
        }
    }

    // The bound that was just folded says what the rest costs at least with this block in each shelter: the cheapest first.
    private (int[] Shelters, (long Bound, int Free)[] Bounds) ChoicesFor(int block, int leastRank, long bound)
    {
        var beyond = _rest.Beyond(block);
        var choices = Array.FindAll(_shelters, shelter => _symmetry.Rank[shelter] >= leastRank && beyond[shelter] != SeatingBound.Impossible
            && !_symmetry.RepeatsEmpty(shelter, _seated, _comes));
        var bounds = Array.ConvertAll(choices, shelter => (bound + beyond[shelter], _seated.Free[shelter]));
        Array.Sort(bounds, choices);
        return (choices, bounds);
    }

    // To these every seat is the same, and there are enough: SeatRest is only reached when all fit.
    private void Finish(int[] plain)
    {
        foreach (var block in plain)
        {
            _seated.Place(block, Array.Find(_shelters, shelter => _comes[shelter] == true && _seated.Free[shelter] > 0));
        }

        if (_seated.Cost() < _bestCost)
        {
            _bestCost = _seated.Cost();
            Best = [.. _seated.At];
        }

        foreach (var block in plain)
        {
            _seated.Take(block);
        }
    }

    private long BoundOf(ReadOnlySpan<int> blocks, long more)
    {
        _looked += ((long)blocks.Length * _shelters.Length) + PerBranch;
        var rest = _rest.Of(blocks);
        return rest == SeatingBound.Impossible ? rest : rest + _seated.Cost(_coming) + more;
    }

    // Whose shelter comes sits in it; who owns two sits in one of them.
    private bool MaySit(int block, int shelter)
    {
        if (_comes[shelter] == false || _seated.Free[shelter] < _model.Size[block])
        {
            return false;
        }

        var own = _model.Own[block];
        if (own.Length > 0 && _model.Owner[shelter] != block && Array.Exists(own, other => _comes[other] == true))
        {
            return false;
        }

        var owner = _model.Owner[shelter];
        return owner < 0 || owner == block || _comes[shelter] == true || _model.Own[owner].Length > 1
            || _seated.Free[shelter] >= _model.Size[block] + _model.Size[owner];
    }
}
