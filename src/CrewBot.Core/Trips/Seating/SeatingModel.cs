namespace CrewBot.Core.Trips.Seating;

/// <summary>The question in numbers: those who must sit together, children with their guardian, are one block.</summary>
internal sealed class SeatingModel
{
    private readonly long _smokeWeight;
    private readonly long _wishWeight;
    private readonly long _moveWeight;

    private SeatingModel(SeatingAsk ask, List<List<int>> members, int[] blockOf)
    {
        Ask = ask;
        Members = members;
        BlockOf = blockOf;
        var people = ask.People;
        Size = [.. members.Select(block => block.Count)];
        Smokers = [.. members.Select(block => block.Count(person => people[person].Smokes))];
        Askers = [.. members.Select(block => block.Count(person => people[person] is { AsksSmokeFree: true, Smokes: false }))];
        Seats = [.. ask.Shelters.Select(shelter => shelter.Seats)];
        var byKey = Enumerable.Range(0, people.Count).ToDictionary(person => people[person].Key);
        Owner = [.. ask.Shelters.Select(shelter => shelter.Owner is { } owner && byKey.TryGetValue(owner, out var person) ? blockOf[person] : -1)];
        Own = [.. members.Select((_, block) => Enumerable.Range(0, Seats.Length).Where(shelter => Owner[shelter] == block).ToArray())];
        Moves = [.. members.Select(block => ask.Shelters.Select(shelter => block.Count(person => people[person].Before is { } before && before != shelter.Key)).ToArray())];
        var ties = ask.Wishes.Select(wish => (One: blockOf[byKey[wish.One]], Other: blockOf[byKey[wish.Other]], wish.IsApart)).ToList();
        AlwaysUnmet = ties.Count(tie => tie.IsApart && tie.One == tie.Other);
        Together = TiesOf(members.Count, ties.Where(tie => !tie.IsApart));
        Apart = TiesOf(members.Count, ties.Where(tie => tie.IsApart));
        _smokeWeight = Seats.Length + 1;
        _wishWeight = _smokeWeight * (people.Count + 1);
        _moveWeight = _wishWeight * (ask.Wishes.Count + 1);
    }

    public SeatingAsk Ask { get; }

    /// <summary>The people of each block, by their place in the ask.</summary>
    public IReadOnlyList<IReadOnlyList<int>> Members { get; }

    /// <summary>The block of each person.</summary>
    public int[] BlockOf { get; }

    public int[] Size { get; }

    public int[] Smokers { get; }

    /// <summary>In each block, those who ask for smoke-free air.</summary>
    public int[] Askers { get; }

    public int[] Seats { get; }

    /// <summary>The block that owns each shelter; -1 for none.</summary>
    public int[] Owner { get; }

    /// <summary>The shelters that each block owns.</summary>
    public int[][] Own { get; }

    /// <summary>How many of a block move when it sits in a shelter.</summary>
    public int[][] Moves { get; }

    public (int Other, int Count)[][] Together { get; }

    public (int Other, int Count)[][] Apart { get; }

    /// <summary>Wishes that no seating meets: apart from one's own guardian.</summary>
    public int AlwaysUnmet { get; }

    /// <summary>Puts everybody into blocks.</summary>
    public static SeatingModel Of(SeatingAsk ask)
    {
        var byKey = Enumerable.Range(0, ask.People.Count).ToDictionary(person => ask.People[person].Key);
        var head = new int[ask.People.Count];
        for (var person = 0; person < head.Length; person++)
        {
            head[person] = HeadOf(ask, byKey, person);
        }

        var heads = head.Distinct().ToList();
        var blockOf = Array.ConvertAll(head, heads.IndexOf);
        var members = heads.Select(_ => new List<int>()).ToList();
        for (var person = 0; person < head.Length; person++)
        {
            members[blockOf[person]].Add(person);
        }

        return new SeatingModel(ask, members, blockOf);
    }

    /// <summary>The four costs as one number that orders the same way.</summary>
    public long Weigh(int moved, int unmet, int inSmoke, int hauled) =>
        (moved * _moveWeight) + (unmet * _wishWeight) + (inSmoke * _smokeWeight) + hauled;

    public SeatingCost CostOf(long weighed) => new(
        (int)(weighed / _moveWeight), (int)(weighed % _moveWeight / _wishWeight),
        (int)(weighed % _wishWeight / _smokeWeight), (int)(weighed % _smokeWeight));

    // A guardian may be in somebody's care in turn; a ring of them would be nobody's, so it ends after a round.
    private static int HeadOf(SeatingAsk ask, Dictionary<string, int> byKey, int person)
    {
        for (var round = 0; round < ask.People.Count; round++)
        {
            if (ask.People[person].Guardian is not { } guardian || !byKey.TryGetValue(guardian, out var next))
            {
                break;
            }

            person = next;
        }

        return person;
    }

    private static (int Other, int Count)[][] TiesOf(int blocks, IEnumerable<(int One, int Other, bool IsApart)> ties)
    {
        var both = ties.Where(tie => tie.One != tie.Other)
            .SelectMany(tie => new[] { (From: tie.One, To: tie.Other), (From: tie.Other, To: tie.One) })
            .ToLookup(tie => tie.From, tie => tie.To);
        return [.. Enumerable.Range(0, blocks).Select(block => both[block].GroupBy(to => to).Select(same => (same.Key, same.Count())).ToArray())];
    }
}
