namespace CrewBot.Core.Trips.Seating;

/// <summary>
/// What seating the rest costs at least. Each block takes its best shelter; a wish between two who both still stand
/// counts as well, as long as the wishes that count form no ring: then the later of the two is folded into the earlier.
/// </summary>
/// <remarks>
/// Directional arc consistency of weighted constraints: J. Larrosa, T. Schiex, "Solving weighted CSP by maintaining arc
/// consistency", Artificial Intelligence 159 (2004), from memory.
/// </remarks>
internal sealed class RestBound
{
    private readonly SeatedBlocks _seated;
    private readonly SeatingModel _model;
    private readonly Func<int, int, bool> _maySit;
    private readonly (int Other, int Count, bool IsApart)[][] _ties;
    private readonly long[][] _costs;
    private readonly int[] _place;

    /// <param name="seated">The blocks that sit.</param>
    /// <param name="maySit">Whether a block may sit in a shelter as things stand.</param>
    public RestBound(SeatedBlocks seated, Func<int, int, bool> maySit)
    {
        _seated = seated;
        _model = seated.Model;
        _maySit = maySit;
        _place = new int[_model.Size.Length];
        _costs = [.. _model.Size.Select(_ => new long[_model.Seats.Length])];
        _ties = [.. _model.Size.Select((_, block) => _model.Together[block].Select(tie => (tie.Other, tie.Count, IsApart: false))
            .Concat(_model.Apart[block].Select(tie => (tie.Other, tie.Count, IsApart: true)))
            .ToArray())];
    }

    /// <summary>Says in which order the blocks will be seated.</summary>
    public void Order(int[] blocks)
    {
        for (var next = 0; next < blocks.Length; next++)
        {
            _place[blocks[next]] = next;
        }
    }

    /// <summary>The bound, weighed; <see cref="SeatingBound.Impossible"/> when somebody can't sit.</summary>
    /// <param name="standing">The blocks to be seated, in order; those left out have no wishes and fit anywhere.</param>
    public long Of(ReadOnlySpan<int> standing)
    {
        var smoke = 0;
        foreach (var block in standing)
        {
            smoke = Math.Max(smoke, Fill(block));
        }

        long rest = _model.Weigh(0, 0, smoke, 0);
        for (var next = standing.Length - 1; next >= 0; next--)
        {
            var block = standing[next];
            var least = _costs[block].Min();
            if (least == SeatingBound.Impossible)
            {
                return least;
            }

            var tie = LastEarlier(block);
            if (tie.Count == 0)
            {
                rest += least;
            }
            else
            {
                Fold(block, tie, least);
            }
        }

        return rest;
    }

    /// <summary>
    /// How much more the rest costs at least, shelter by shelter, when the first of those that <see cref="Of"/> was asked about
    /// sits there and not in its best place.
    /// </summary>
    public long[] Beyond(int first)
    {
        var least = _costs[first].Min();
        return Array.ConvertAll(_costs[first], cost => cost == SeatingBound.Impossible ? cost : cost - least);
    }

    /// <summary>Writes down what each shelter costs a block.</summary>
    /// <returns>How many sit already where a smoker's best place is. Two smokers may share it, so it is never added up.</returns>
    private int Fill(int block)
    {
        var costs = _costs[block];
        var moves = _model.Moves[block];
        var smokes = _model.Smokers[block] > 0;
        var least = int.MaxValue;
        for (var shelter = 0; shelter < costs.Length; shelter++)
        {
            if (_seated.Free[shelter] < _model.Size[block] || !_maySit(block, shelter))
            {
                costs[shelter] = SeatingBound.Impossible;
                continue;
            }

            var isSmoky = _seated.IsSmoky(shelter);
            costs[shelter] = _model.Weigh(moves[shelter], 0, isSmoky || smokes ? _model.Askers[block] : 0, 0);
            least = Math.Min(least, isSmoky ? 0 : _seated.AskersIn(shelter));
        }

        FillWishes(block, costs);
        return smokes && least != int.MaxValue ? least : 0;
    }

    // Wishes with those who sit: one to be together costs everywhere but there, one to be apart costs there.
    private void FillWishes(int block, long[] costs)
    {
        var everywhere = 0L;
        foreach (var (other, count, isApart) in _ties[block])
        {
            if (_seated.At[other] is var there and not SeatedBlocks.Nowhere)
            {
                var unmet = _model.Weigh(0, count, 0, 0);
                everywhere += isApart ? 0 : unmet;
                costs[there] = Plus(costs[there], isApart ? unmet : -unmet);
            }
        }

        for (var shelter = 0; everywhere > 0 && shelter < costs.Length; shelter++)
        {
            costs[shelter] = Plus(costs[shelter], everywhere);
        }
    }

    private (int Other, int Count, bool IsApart) LastEarlier(int block)
    {
        var last = default((int Other, int Count, bool IsApart));
        foreach (var tie in _ties[block])
        {
            if (_seated.At[tie.Other] == SeatedBlocks.Nowhere && _place[tie.Other] < _place[block]
                && (last.Count == 0 || _place[tie.Other] > _place[last.Other]))
            {
                last = tie;
            }
        }

        return last;
    }

    private void Fold(int block, (int Other, int Count, bool IsApart) tie, long least)
    {
        var costs = _costs[block];
        var into = _costs[tie.Other];
        var unmet = _model.Weigh(0, tie.Count, 0, 0);
        var (best, second) = TwoLeast(costs);
        for (var shelter = 0; shelter < costs.Length; shelter++)
        {
            if (into[shelter] == SeatingBound.Impossible)
            {
                continue;
            }

            var elsewhere = shelter == best ? second : least;
            var together = costs[shelter] == SeatingBound.Impossible || _seated.Free[shelter] < _model.Size[block] + _model.Size[tie.Other]
                ? SeatingBound.Impossible
                : costs[shelter];
            var folded = tie.IsApart ? Math.Min(elsewhere, Plus(together, unmet)) : Math.Min(Plus(elsewhere, unmet), together);
            into[shelter] = Plus(into[shelter], folded);
        }
    }

    private static (int Best, long Second) TwoLeast(long[] costs)
    {
        var best = 0;
        var second = SeatingBound.Impossible;
        for (var shelter = 1; shelter < costs.Length; shelter++)
        {
            if (costs[shelter] < costs[best])
            {
                second = costs[best];
                best = shelter;
            }
            else
            {
                second = Math.Min(second, costs[shelter]);
            }
        }

        return (best, second);
    }

    private static long Plus(long cost, long more) =>
        cost == SeatingBound.Impossible || more == SeatingBound.Impossible ? SeatingBound.Impossible : cost + more;
}
