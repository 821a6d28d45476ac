namespace CrewBot.Core.Rigs;

/// <summary>Finds the one thing that would help most to rig from a box.</summary>
/// <param name="planner">Plans with it and without.</param>
/// <remarks>
/// Every part of every rig that suits is tried in the box. A box costs the place of its first rig among those that suit, and
/// how far that rig is from suiting (<see cref="Strain"/>); the part that lowers the cost most is the one to buy.
/// </remarks>
public sealed class PurchaseAdviser(RigPlanner planner)
{
    // Less than half a hook size is not worth a trip to the shop.
    private const double LeastGain = 0.12;

    /// <summary>Advises.</summary>
    /// <param name="ask">A question with a box.</param>
    /// <returns>Null when nothing helps, or nothing suits whatever is bought.</returns>
    public Purchase? Advise(RigAsk ask)
    {
        var own = ask.Tackle ?? throw new ArgumentException("The question has no box.", nameof(ask));
        var suited = planner.Suited(ask);
        var now = BestOf(ask, own, suited);
        var offers = suited.SelectMany(rig => Tackle.Of(rig).Pieces())
            .Where(piece => !own.Holds(piece))
            .Select(piece => (Piece: piece, Best: BestOf(ask, own.With(piece), suited)))
            .Where(offer => offer.Best is not null)
            .ToList();
        if (offers.Count > 0)
        {
            var (piece, best) = offers.MinBy(offer => offer.Best!.Value.Cost);
            return now is null || best!.Value.Cost < now.Value.Cost - LeastGain
                ? new Purchase(NameOf(piece), Gain(ask, now?.Rig, best!.Value.Rig), [])
                : null;
        }

        return now is null && suited.Count > 0 ? ForAWholeRig(ask, own, suited) : null;
    }

    private (Rig Rig, double Cost)? BestOf(RigAsk ask, Tackle tackle, IReadOnlyList<Rig> suited)
    {
        for (var place = 0; place < suited.Count; place++)
        {
            if (planner.RigOf(ask with { Tackle = tackle }, suited[place].Presentation) is { } rig)
            {
                return (rig, place + Strain.Of(rig, suited[place]));
            }
        }

        return null;
    }

    // Of the rigs that lack more than one thing, the one that lacks least; of those, the first.
    private Purchase ForAWholeRig(RigAsk ask, Tackle own, IReadOnlyList<Rig> suited)
    {
        var (rig, lacking) = suited.Select(rig => (rig, Lacking: Lacking(ask, own, rig))).MinBy(pair => pair.Lacking.Count);
        return new Purchase(NameOf(lacking[0]), $"the start of a {rig.Presentation.Name} rig", [.. lacking.Skip(1).Select(NameOf)]);
    }

    private List<Tackle> Lacking(RigAsk ask, Tackle own, Rig rig)
    {
        var pieces = Tackle.Of(rig).Pieces().ToList();
        return [.. pieces.Where(piece => planner.RigOf(
            ask with { Tackle = pieces.Where(other => other != piece).Aggregate(own, (sum, other) => sum.With(other)) }, rig.Presentation) is null)];
    }

    private static FormattableString Gain(RigAsk ask, Rig? now, Rig then) =>
        now is null ? $"then a {then.Presentation.Name} can be tied"
        : now.Presentation.Key != then.Presentation.Key
            ? $"then a {then.Presentation.Name} can be tied, which goes ahead of a {now.Presentation.Name} for {ask.Mood.ToString().ToLowerInvariant()} {ask.Species.Name}"
        : (FormattableString)$"nearer to what suits a {then.Presentation.Name} here than what you have";

    private static FormattableString NameOf(Tackle piece) => piece switch
    {
        { Lines: [var line] } => $"{line.Test:test} {line.Material.Name}",
        { Leaders: [var leader] } => $"{leader.Test:test} {leader.Material.Name} leader",
        { Lures: [var lure] } => $"{lure.Weight:lure} {(lure.IsPlainMetal ? $"{lure.Material.Name} " : "")}{lure.Presentation.Body}",
        { Hooks: [var hook] } => $"size {hook} hooks",
        _ => throw new ArgumentException("One thing is named at a time.", nameof(piece)),
    };
}
