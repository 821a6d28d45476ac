using CrewBot.Core.Knowledge;
using UnitsNet;

namespace CrewBot.Core.Rigs;

/// <summary>Chooses rod, mainline, join, leader and metal for a fish and a presentation.</summary>
internal sealed class LineChooser(TradeKnowledge knowledge)
{
    private static readonly string[] MainlinesInOrder = ["braid", "fluorocarbon", "nylon"];
    private static readonly string[] LeadersInOrder = ["fluorocarbon", "nylon"];
    private static readonly string[] BiteLeadersInOrder = ["steel", "titanium"];
    private static readonly string[] JoinsInOrder = ["double-uni", "alberto", "fg"];

    // Wire is not made thin enough for the lightest lines: how many rods up it may lead before it makes no sense.
    private const int MostStepsForWire = 2;

    private static readonly Length JiggedBiteLeader = Length.FromInches(12);
    private static readonly Length SetBiteLeader = Length.FromInches(18);

    private readonly Dictionary<HardwareKind, Hardware[]> _metal = knowledge.Hardware
        .GroupBy(piece => piece.Kind)
        .ToDictionary(kind => kind.Key, kind => kind.OrderBy(piece => piece.Rated.Newtons).ToArray());

    private readonly Knot[] _joins = [.. JoinsInOrder.Select(key => knowledge.Knots[key])];

    /// <summary>Chooses the lines.</summary>
    /// <param name="ask">What is asked.</param>
    /// <param name="presentation">How it will be fished; it has an outfit for the species' class.</param>
    /// <param name="biteLeader">Whether teeth call for wire.</param>
    public Choice<RigParts> Choose(RigAsk ask, Presentation presentation, bool biteLeader)
    {
        if (FirstAllowed(MainlinesInOrder, ask) is not { } main)
        {
            return (FormattableString)$"every mainline is ruled out; allow braid, fluorocarbon or nylon";
        }

        var leader = FirstAllowed(biteLeader ? BiteLeadersInOrder : LeadersInOrder, ask);
        if (leader is null && biteLeader)
        {
            return (FormattableString)$"{ask.Species.Name} cut line and wire is ruled out; allow steel or titanium";
        }

        if (leader is null && main.Key == "braid" && ask.Species.LineShyness != Shyness.Low)
        {
            return (FormattableString)$"{ask.Species.Name} shy from braid and every leader is ruled out; allow fluorocarbon or nylon";
        }

        return Strongest(ask, presentation, main, leader);
    }

    /// <summary>A mainline, and every leader that rods are fished with.</summary>
    public Tackle Around(LineChoice main) => new()
    {
        Lines = [main],
        Leaders =
        [
            .. LeadersInOrder.SelectMany(key => knowledge.Outfits.Select(outfit => new LineChoice(knowledge.Lines[key], outfit.Leader))),
            .. BiteLeadersInOrder.SelectMany(key => knowledge.Outfits.Select(outfit => new LineChoice(knowledge.Lines[key], outfit.Wire))),
        ],
    };

    /// <summary>A mainline and a leader tied together, by each join that makes a difference.</summary>
    /// <param name="ask">What is asked.</param>
    /// <param name="presentation">How it will be fished.</param>
    /// <param name="main">The mainline.</param>
    /// <param name="leader">The leader; null for none.</param>
    public IEnumerable<TiedRig> Tied(RigAsk ask, Presentation presentation, LineChoice main, LineChoice? leader)
    {
        var test = leader?.Test ?? main.Test;
        var outfit = RodFor(main) with { Braid = main.Test, SingleStrand = main.Test, Leader = test, Wire = test };
        foreach (var join in _joins)
        {
            var tied = Tie(ask, presentation, outfit, main.Material, leader?.Material, join);
            yield return tied;
            if (tied.Join != join)
            {
                yield break;
            }
        }
    }

    /// <summary>Lines that were tied from a box, with the rod for them and why they are so.</summary>
    public RigParts PartsOf(RigAsk ask, Presentation presentation, TiedRig tied, RigParts suited)
    {
        var outfit = RodFor(tied.Mainline);
        var place = IndexOf(outfit.Key);
        return new RigParts(
            outfit, tied, new LineReasons(ask, presentation, outfit, tied, _joins[0], new OutfitStep(place, place, place, false)) { Suited = suited.Tied });
    }

    // The rod that is nearest to fishing this line.
    private Outfit RodFor(LineChoice main) => knowledge.Outfits.MinBy(outfit =>
        Math.Abs(Math.Log((main.Material.Key == "braid" ? outfit.Braid : outfit.SingleStrand).Newtons / main.Test.Newtons)))!;

    private Choice<RigParts> Strongest(RigAsk ask, Presentation presentation, LineMaterial main, LineMaterial? leader)
    {
        var pull = WorkingPull.Of(ask.Species.Weights[ask.Size]);
        var usual = IndexOf(presentation.Outfits[ask.Species.Class]);
        var rung = Math.Clamp(usual + StepsFor(ask.Size), 0, knowledge.Outfits.Count - 1);
        var start = rung;
        var tooWeak = false;
        while (true)
        {
            var outfit = knowledge.Outfits[rung];
            foreach (var join in _joins)
            {
                var tied = Tie(ask, presentation, outfit, main, leader, join);
                var holds = WeakestLink.Of(RigStrength.LinksOf(tied)).Low >= pull;
                var last = rung == knowledge.Outfits.Count - 1 && (join == _joins[^1] || tied.Join != join);
                if ((holds && !OutlastsMainline(tied)) || last)
                {
                    var step = new OutfitStep(usual, start, rung, tooWeak);
                    return new RigParts(outfit, tied, new LineReasons(ask, presentation, outfit, tied, _joins[0], step));
                }

                tooWeak |= !holds;

                if (tied.Join != join)
                {
                    break; // no line-to-line join in this rig: another would change nothing
                }
            }

            rung++;
            if (!tooWeak && rung > start + MostStepsForWire)
            {
                return (FormattableString)$"the lightest {leader!.Name} outlasts any line that suits a {presentation.Name} for {ask.Species.Name}";
            }
        }
    }

    private static bool OutlastsMainline(TiedRig tied) =>
        RigStrength.AtJoin(tied) is { } holds && holds.LeaderAtWorst > holds.MainAtBest;

    private TiedRig Tie(
        RigAsk ask, Presentation presentation, Outfit outfit, LineMaterial main, LineMaterial? leader, Knot join)
    {
        var mainline = new LineChoice(main, main.Key == "braid" ? outfit.Braid : outfit.SingleStrand);
        var bite = leader?.Use == LineUse.Bite;
        if (!presentation.TwistsLine && (leader is null || leader.Key == main.Key))
        {
            return new TiedRig
            {
                Mainline = mainline,
                LureKnot = LureKnot(presentation, bite: false),
                Hardware = [.. Metal(presentation.Snap, HardwareKind.Snap, mainline.Test)],
            };
        }

        // A lure that twists line needs a swivel, and a swivel a stretch of line below it, if only more of the same.
        var line = leader is null || leader.Key == main.Key ? mainline : new LineChoice(leader, bite ? outfit.Wire : outfit.Leader);
        var swivel = bite || presentation.TwistsLine;
        var strongest = mainline.Test > line.Test ? mainline.Test : line.Test;
        return new TiedRig
        {
            Mainline = mainline,
            Leader = new Leader(line, LengthOf(ask.Species, presentation, bite)),
            Join = swivel ? knowledge.Knots["palomar"] : join,
            LureKnot = LureKnot(presentation, bite),
            Hardware =
            [
                .. Metal(swivel, HardwareKind.Swivel, strongest),
                .. Metal(presentation.Snap || (bite && !presentation.SetLine), HardwareKind.Snap, line.Test),
            ],
        };
    }

    private Knot LureKnot(Presentation presentation, bool bite)
    {
        var usual = knowledge.Knots[presentation.Knot];
        return bite ? knowledge.Knots["crimp"] : usual.Kind == KnotKind.Crimp ? knowledge.Knots["palomar"] : usual;
    }

    // The smallest piece that is no weaker than the line it stands in.
    private Hardware[] Metal(bool wanted, HardwareKind kind, Force line)
    {
        if (!wanted)
        {
            return [];
        }

        var pieces = _metal[kind];
        return [Array.Find(pieces, piece => piece.Rated >= line) ?? pieces[^1]];
    }

    private static Length LengthOf(Species species, Presentation presentation, bool bite) => bite
        ? presentation.SetLine ? SetBiteLeader : JiggedBiteLeader
        : species.LineShyness switch
        {
            Shyness.High => Length.FromInches(36),
            Shyness.Moderate => Length.FromInches(30),
            _ => Length.FromInches(24),
        };

    private LineMaterial? FirstAllowed(string[] keys, RigAsk ask) =>
        Array.Find(keys, key => !ask.Without.Contains(key)) is { } first ? knowledge.Lines[first] : null;

    private int IndexOf(string outfit)
    {
        var index = 0;
        while (knowledge.Outfits[index].Key != outfit)
        {
            index++;
        }

        return index;
    }

    private static int StepsFor(FishSize size) => size switch
    {
        FishSize.Small => -1,
        FishSize.Typical => 0,
        _ => 1,
    };
}
