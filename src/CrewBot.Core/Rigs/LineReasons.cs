using CrewBot.Core.Knowledge;
using CrewBot.Core.Lines;
using UnitsNet;

namespace CrewBot.Core.Rigs;

/// <summary>Says why a rig's lines are what they are.</summary>
internal sealed class LineReasons(
    RigAsk ask, Presentation presentation, Outfit outfit, TiedRig tied, Knot usualJoin, OutfitStep step)
{
    // The spool of a small winter reel: common practice.
    private static readonly Length CoilOfSmallSpool = Length.FromMillimeters(35);

    /// <summary>What would suit, where these lines are the nearest of a box or to what is on the reel; null where they suit.</summary>
    public TiedRig? Suited { get; init; }

    /// <summary>The mainline that would suit better than the one that is there; null where none would.</summary>
    public LineChoice? BetterMainline => Suited is { Mainline: var suited } && Strain.Of(tied.Mainline, suited) > 0 ? suited : null;

    /// <summary>Gives the reasons, reel to lure.</summary>
    public IReadOnlyList<Reason> Give()
    {
        var reasons = new List<Reason>
        {
            new("rod", Rod()),
            new("mainline", Mainline()),
        };
        if (tied.Leader is { } leader)
        {
            reasons.Add(new("join", Join(leader)));
            reasons.Add(new("leader", LeaderWhy(leader)));
        }

        reasons.Add(new("knot", (FormattableString)$"{tied.LureKnot.Name}: {tied.LureKnot.Note}"));
        reasons.AddRange(tied.Hardware.Select(piece => new Reason(
            NameOf(piece.Kind), $"{piece.Name}, rated {piece.Rated:test}: the smallest that is no weaker than the line.")));
        return reasons;
    }

    private FormattableString Rod() => Suited is not null
        ? $"The {outfit.Name} ({outfit.Rod}), or what comes nearest: {tied.Mainline.Test:test} {tied.Mainline.Material.Name} is fished on it."
        : step.Taken > step.Start && step.TooWeak
        ? $"The {outfit.Name} ({outfit.Rod}) instead of the usual one: half the weight of a {Size()} {ask.Species.Name}, {WorkingPull.Of(ask.Species.Weights[ask.Size])}, has to hold at the weakest knot's low end."
        : step.Taken > step.Start
        ? $"The {outfit.Name} ({outfit.Rod}) instead of the usual one: on lighter line the wire outlasts the mainline, and a fish swims off with all of it."
        : step.Start != step.Usual
            ? $"The {outfit.Name} ({outfit.Rod}): one step {(step.Start > step.Usual ? "up" : "down")} for a {Size()} fish."
            : (FormattableString)$"The {outfit.Name} ({outfit.Rod}) is what {Plural(presentation.Name)} are fished on for {ask.Species.Name}.";

    private FormattableString Mainline() => BetterMainline is { } better
        ? ask.Tackle is null
            ? $"{tied.Mainline.Test:test} {tied.Mainline.Material.Name} is what your reel holds; {better.Test:test} {better.Material.Name} suits best."
            : (FormattableString)$"{tied.Mainline.Test:test} {tied.Mainline.Material.Name} is what your box holds nearest to the {better.Test:test} {better.Material.Name} that suits."
        : tied.Mainline.Material.Key == "braid"
        ? $"Braid gives almost nothing at depth, so you feel the bite and the hook goes home; {tied.Mainline.Test:test} is the {outfit.Name}'s own."
        : (FormattableString)$"{tied.Mainline.Material.Name}, since braid is ruled out: it stretches more, so set harder.";

    private FormattableString Join(Leader leader)
    {
        if (tied.HasSwivel)
        {
            return leader.Line.Material.Use == LineUse.Bite
                ? $"A swivel between {tied.Mainline.Material.Name} and wire: wire is not knotted to line."
                : (FormattableString)$"A small swivel, because a {presentation.Name} twists line, and a fixed spool adds some {LineTwist.TurnsOffFixedSpool(ask.Depth, CoilOfSmallSpool):0} turns on every drop to {ask.Depth}.";
        }

        return tied.Join == usualJoin
            ? $"{tied.Join!.Name}: quick with cold hands. Not the strongest, but strong enough here."
            : (FormattableString)$"{tied.Join!.Name}, better tied at home: a {usualJoin.Name} would be the weak point for a {Size()} {ask.Species.Name}.";
    }

    private FormattableString LeaderWhy(Leader leader) => leader.Line.Material.Use == LineUse.Bite
        ? $"{Teeth()}: {leader.Length:gap} of {leader.Line.Material.Name} keeps their teeth off the line."
        : (FormattableString)$"{leader.Length:gap} of {leader.Line.Material.Name}: {Shy(ask.Species.LineShyness)}, and it stands rubbing better than braid.";

    private string Teeth() => ask.Species.Teeth == Knowledge.Teeth.Cuts
        ? $"{ask.Species.Name} cut anything but wire"
        : "Something with teeth is about";

    private string Size() => ask.Size.ToString().ToLowerInvariant();

    private static string Plural(string name) => name.EndsWith('s') ? name : name.EndsWith('y') ? name[..^1] + "ies" : name + "s";

    private static string Shy(Shyness shyness) => shyness switch
    {
        Shyness.High => "they are line-shy",
        Shyness.Moderate => "they mind braid in clear water",
        _ => "they hardly mind line",
    };

    private static string NameOf(HardwareKind kind) => kind switch
    {
        HardwareKind.Swivel => "swivel",
        HardwareKind.Snap => "snap",
        _ => "split ring",
    };
}
