namespace CrewBot.Core.Trips.Seating;

/// <summary>Shelters and blocks that are as good as each other: one order of them stands for all.</summary>
internal sealed class SeatingSymmetry
{
    private const int None = -1;

    private readonly int[] _shelterBefore;

    /// <param name="model">The question.</param>
    /// <param name="order">The shelters in the order in which they are decided.</param>
    public SeatingSymmetry(SeatingModel model, int[] order)
    {
        Rank = new int[order.Length];
        _shelterBefore = new int[order.Length];
        for (var next = 0; next < order.Length; next++)
        {
            var shelter = order[next];
            Rank[shelter] = next;
            var before = Array.FindLastIndex(order, next, next + 1, other => other != shelter && AreAlike(model, shelter, other));
            _shelterBefore[shelter] = before < 0 ? None : order[before];
        }

        var kinds = new Dictionary<string, int>();
        Kind = new int[model.Size.Length];
        IsPlain = new bool[model.Size.Length];
        for (var block = 0; block < Kind.Length; block++)
        {
            var hasWish = model.Together[block].Length + model.Apart[block].Length > 0;
            var kind = hasWish || model.Own[block].Length > 1
                ? $"{block}"
                : $"{model.Size[block]} {model.Smokers[block]} {model.Askers[block]} {string.Join(',', model.Moves[block])}";
            kinds.TryAdd(kind, kinds.Count);
            Kind[block] = kinds[kind];
            IsPlain[block] = !hasWish && model.Own[block].Length <= 1 && model.Size[block] == 1
                && model.Smokers[block] + model.Askers[block] + model.Moves[block].Sum() == 0;
        }
    }

    /// <summary>The place of each shelter in the order.</summary>
    public int[] Rank { get; }

    /// <summary>Blocks of one kind are as good as each other, unless their own shelter comes.</summary>
    public int[] Kind { get; }

    /// <summary>One person each, to whom every seat is the same, unless their own shelter comes.</summary>
    public bool[] IsPlain { get; }

    /// <summary>Is a shelter like this one staying at home already? Then this one does too.</summary>
    public bool StaysWithItsLike(int shelter, bool?[] comes) =>
        _shelterBefore[shelter] is var before and not None && comes[before] == false;

    /// <summary>Does an empty shelter like this one come before it?</summary>
    public bool RepeatsEmpty(int shelter, SeatedBlocks seated, bool?[] comes) =>
        seated.IsEmpty(shelter) && _shelterBefore[shelter] is var before and not None && comes[before] == true && seated.IsEmpty(before);

    private static bool AreAlike(SeatingModel model, int one, int other) =>
        model.Owner[one] == None && model.Owner[other] == None && model.Seats[one] == model.Seats[other]
        && model.Moves.All(moves => moves[one] == moves[other]);
}
