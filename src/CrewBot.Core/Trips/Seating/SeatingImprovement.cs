namespace CrewBot.Core.Trips.Seating;

/// <summary>Finds a good seating fast: a first one that fits, then small changes, worse ones now and then, less and less often.</summary>
/// <remarks>
/// Simulated annealing: S. Kirkpatrick, C. D. Gelatt, M. P. Vecchi, "Optimization by simulated annealing", Science 220
/// (1983). What it finds is only a start: whether it is the best is the search's to prove.
/// </remarks>
internal sealed class SeatingImprovement(SeatingModel model)
{
    private const double Warm = 8;
    private const double Cold = 0.2;

    // How hot a change looks: the order of the four costs, softened, so that a shelter can be emptied over a passing wish.
    private const double PerMove = 24;
    private const double PerWish = 10;
    private const double PerSmoke = 4;
    private const double PerShelter = 1.5;

    private readonly SeatedBlocks _seated = new(model);
    private readonly Random _random = new(1);

    /// <summary>The shelter of each block, or null when no first seating was found.</summary>
    public int[]? Run(int changes)
    {
        if (!SeatFirst(few: true) && !SeatFirst(few: false))
        {
            return null;
        }

        int[] best = [.. _seated.At];
        var bestCost = _seated.Cost();
        for (var change = 0; change < changes; change++)
        {
            var heat = Warm * Math.Pow(Cold / Warm, (double)change / changes);
            Change(heat);
            if (_seated.Cost() < bestCost)
            {
                bestCost = _seated.Cost();
                best = [.. _seated.At];
            }
        }

        return best;
    }

    private void Change(double heat)
    {
        var block = _random.Next(model.Size.Length);
        if (_random.Next(2) == 0)
        {
            Move(block, _random.Next(model.Seats.Length), heat);
        }
        else
        {
            Swap(block, _random.Next(model.Size.Length), heat);
        }
    }

    private void Move(int block, int to, double heat)
    {
        var from = _seated.At[block];
        if (to == from || !MayLeave(block))
        {
            return;
        }

        var before = Warmth();
        _seated.Take(block);
        if (!MaySit(block, to))
        {
            _seated.Place(block, from);
            return;
        }

        _seated.Place(block, to);
        if (!Accept(Warmth() - before, heat))
        {
            _seated.Take(block);
            _seated.Place(block, from);
        }
    }

    private void Swap(int one, int other, double heat)
    {
        var (from, to) = (_seated.At[one], _seated.At[other]);
        if (from == to || model.Owner[from] == one || model.Owner[to] == other
            || _seated.Free[from] + model.Size[one] < model.Size[other] || _seated.Free[to] + model.Size[other] < model.Size[one])
        {
            return;
        }

        var before = Warmth();
        Exchange(one, to, other, from);
        if (!Accept(Warmth() - before, heat))
        {
            Exchange(one, from, other, to);
        }
    }

    private void Exchange(int one, int oneTo, int other, int otherTo)
    {
        _seated.Take(one);
        _seated.Take(other);
        _seated.Place(one, oneTo);
        _seated.Place(other, otherTo);
    }

    private bool Accept(double worse, double heat) => worse <= 0 || _random.NextDouble() < Math.Exp(-worse / heat);

    private double Warmth() =>
        (_seated.Moved * PerMove) + (_seated.Unmet * PerWish) + (_seated.InSmoke * PerSmoke) + (_seated.Used * PerShelter);

    private bool MaySit(int block, int shelter)
    {
        var owner = model.Owner[shelter];
        return _seated.Free[shelter] >= model.Size[block]
            && (owner < 0 || owner == block || SitsInOwn(owner))
            && Array.TrueForAll(model.Own[block], own => own == shelter || model.Owner[shelter] == block || _seated.IsEmpty(own));
    }

    private bool SitsInOwn(int owner) => _seated.At[owner] is var at and not SeatedBlocks.Nowhere && model.Owner[at] == owner;

    // An owner leaves their own shelter last.
    private bool MayLeave(int block)
    {
        var at = _seated.At[block];
        return model.Owner[at] != block || _seated.Free[at] + model.Size[block] == model.Seats[at];
    }

    private bool SeatFirst(bool few)
    {
        Empty();
        var seats = 0;
        foreach (var shelter in Enumerable.Range(0, model.Seats.Length).OrderByDescending(WasTold).ThenByDescending(shelter => model.Seats[shelter]))
        {
            var owner = model.Owner[shelter];
            if (few && seats >= model.Size.Sum() && !WasTold(shelter))
            {
                break;
            }

            if (owner >= 0 && _seated.At[owner] == SeatedBlocks.Nowhere && _seated.Free[shelter] >= model.Size[owner])
            {
                _seated.Place(owner, shelter);
            }

            seats += owner < 0 || SitsInOwn(owner) ? model.Seats[shelter] : 0;
        }

        return Enumerable.Range(0, model.Size.Length)
            .Where(block => _seated.At[block] == SeatedBlocks.Nowhere)
            .OrderByDescending(block => model.Size[block])
            .All(SeatBest);
    }

    private bool WasTold(int shelter) => model.Ask.People.Any(person => person.Before == model.Ask.Shelters[shelter].Key);

    private bool SeatBest(int block)
    {
        var choices = Enumerable.Range(0, model.Seats.Length).Where(shelter => MaySit(block, shelter)).ToList();
        if (choices.Count == 0)
        {
            return false;
        }

        _seated.Place(block, choices.MinBy(shelter => (
            model.Weigh(model.Moves[block][shelter], _seated.UnmetBy(block, shelter), _seated.SmokeBy(block, shelter), _seated.IsEmpty(shelter) ? 1 : 0),
            _seated.Free[shelter])));
        return true;
    }

    private void Empty()
    {
        for (var block = 0; block < model.Size.Length; block++)
        {
            if (_seated.At[block] != SeatedBlocks.Nowhere)
            {
                _seated.Take(block);
            }
        }
    }
}
