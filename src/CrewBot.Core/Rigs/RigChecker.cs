using CrewBot.Core.Knowledge;
using UnitsNet;

namespace CrewBot.Core.Rigs;

/// <summary>Looks at a rig someone has tied: where it gives way, and what is wrong with it.</summary>
public static class RigChecker
{
    /// <summary>Checks a rig.</summary>
    /// <param name="rig">What is tied.</param>
    /// <param name="situation">What it is up against.</param>
    public static RigVerdict Check(TiedRig rig, RigSituation situation)
    {
        var links = RigStrength.LinksOf(rig);
        var weakest = WeakestLink.Of(links);
        IEnumerable<RigFault?> faults =
        [
            NoBiteLeader(rig, situation),
            TooWeak(links, situation),
            HookTooLight(rig, situation),
            MainlinePartsFirst(rig),
            .. rig.Hardware.Select(piece => HardwareWeaker(rig, piece)),
            KnotUnsuited(rig.Join, rig.Mainline.Material),
            rig.Leader is { } leader ? KnotUnsuited(rig.LureKnot, leader.Line.Material) : KnotUnsuited(rig.LureKnot, rig.Mainline.Material),
            TooLightForDepth(rig, situation),
            TooLightForCurrent(rig, situation),
            BraidToLure(rig, situation),
            NoSwivel(rig),
        ];
        return new RigVerdict(
            weakest, DragSetting.For(weakest), LostAt(weakest.Place, rig), [.. faults.OfType<RigFault>().OrderBy(fault => fault.Kind)]);
    }

    private static RigFault? NoBiteLeader(TiedRig rig, RigSituation situation) =>
        situation.Species is { Teeth: Teeth.Cuts } cutter && rig.Leader is not { Line.Material.Use: LineUse.Bite }
            ? new(
                RigFaultKind.NoBiteLeader,
                $"No bite leader: a {cutter.Name} cuts {(rig.Leader?.Line ?? rig.Mainline).Material.Name} of any test.",
                $"Tie in {Length.FromInches(12):gap} or more of steel or titanium with a swivel.")
            : null;

    private static RigFault? TooWeak(IReadOnlyList<Link> links, RigSituation situation)
    {
        if (situation.Species is not { } species)
        {
            return null;
        }

        var pull = WorkingPull.Of(species.Weights[situation.Size]);
        var weakest = links.Where(link => link.Place != RigStrength.HookBending).MinBy(link => link.Low.Newtons)!;
        return weakest.Low < pull
            ? new(
                RigFaultKind.TooWeakForFish,
                $"Too weak: {weakest.Place} may part at {weakest.Low}; a {Word(situation.Size)} {species.Name} pulls {pull}.",
                $"Go a line size up, or tie a stronger knot there.")
            : null;
    }

    private static RigFault? HookTooLight(TiedRig rig, RigSituation situation)
    {
        if (rig.Hook is not { } hook || situation.Species is not { } species)
        {
            return null;
        }

        var pull = WorkingPull.Of(species.Weights[situation.Size]);
        return hook.Opens.High < pull
            ? new(
                RigFaultKind.HookTooLight,
                $"Hook too light: {hook.Name} opens at {hook.Opens.High} at best; a {Word(situation.Size)} {species.Name} pulls {pull}.",
                $"Take a bigger hook of strong wire.")
            : null;
    }

    private static RigFault? MainlinePartsFirst(TiedRig rig) =>
        RigStrength.AtJoin(rig) is { } holds && holds.MainAtBest < holds.LeaderAtWorst
            ? new(
                RigFaultKind.MainlinePartsFirst,
                $"The mainline goes first: {rig.Mainline.Test:test} {rig.Mainline.Material.Name} holds {holds.MainAtBest} at best at the {rig.Join!.Name}, the leader {holds.LeaderAtWorst} at worst, so a fish swims off with the whole leader.",
                $"Use a lighter leader or a heavier mainline.")
            : null;

    private static RigFault? HardwareWeaker(TiedRig rig, Hardware piece)
    {
        var weakestLine = rig.Leader is { } leader && leader.Line.Test < rig.Mainline.Test ? leader.Line : rig.Mainline;
        return piece.Rated < weakestLine.Test
            ? new(
                RigFaultKind.HardwareWeaker,
                $"The {piece.Name} is rated {piece.Rated:test}, less than the {weakestLine.Test:test} {weakestLine.Material.Name}.",
                $"Take one that is rated above the line.")
            : null;
    }

    private static RigFault? KnotUnsuited(Knot? knot, LineMaterial line) =>
        knot is not null && line.Use != LineUse.Bite && !knot.Efficiency.ContainsKey(line.Key)
            ? new(
                RigFaultKind.KnotUnsuited,
                $"A {knot.Name} is not a knot for {line.Name}: reckon with half the line's strength.",
                $"Tie one that is made for {line.Name}.")
            : null;

    private static RigFault? TooLightForDepth(TiedRig rig, RigSituation situation) =>
        rig.Lure is { } lure && situation.Depth is { } depth && !LureFit.GetsDown(lure, rig.Mainline.InWater, depth, situation.Water)
            ? new(
                RigFaultKind.TooLightForDepth,
                $"Too light: {lure.Weight:lure} on {rig.Mainline.Diameter:fine} line takes more than {LureFit.LongestDrop(depth)} to {depth}.",
                $"Go heavier, thinner, or to tungsten.")
            : null;

    private static RigFault? TooLightForCurrent(TiedRig rig, RigSituation situation) =>
        rig.Lure is { } lure && situation.Depth is { } depth && situation.Current.MetersPerSecond > 0
            && !LureFit.Holds(lure, rig.Mainline.InWater, depth, situation.Current, situation.Water)
            ? new(
                RigFaultKind.TooLightForCurrent,
                $"Drifts off: in {situation.Current} of current the line leans more than {LureFit.GreatestLean}.",
                $"Go heavier, or to thinner line.")
            : null;

    private static RigFault? BraidToLure(TiedRig rig, RigSituation situation) =>
        rig.Leader is null && rig.Mainline.Material.Use == LineUse.Main && situation.Species is { } species
            && species.LineShyness != Shyness.Low
            ? new(
                RigFaultKind.BraidToLure,
                $"No leader: {species.Name} see {rig.Mainline.Material.Name} straight to the lure.",
                $"Tie in {Length.FromInches(24):gap} to {Length.FromFeet(3):gap} of fluorocarbon.")
            : null;

    private static RigFault? NoSwivel(TiedRig rig) =>
        rig.Lure is { Presentation.TwistsLine: true } lure && !rig.HasSwivel
            ? new(
                RigFaultKind.NoSwivel,
                $"A {lure.Presentation.Name} twists line, and there is no swivel.",
                $"Put a small swivel at the leader's upper end.")
            : null;

    private static string LostAt(string place, TiedRig rig) =>
        place == RigStrength.HookBending ? "the fish goes, nothing else"
        : rig.Leader is null || place == RigStrength.LureKnot || rig.Hardware.Any(piece => piece.Kind != HardwareKind.Swivel && place == RigStrength.PlaceOf(piece))
            ? "the lure goes, the line stays whole"
            : "leader and lure go, the mainline stays whole";

    private static string Word(FishSize size) => size.ToString().ToLowerInvariant();
}
