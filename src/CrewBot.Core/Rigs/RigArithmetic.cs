using CrewBot.Core.Fish;
using CrewBot.Core.Knowledge;
using CrewBot.Core.Lines;
using CrewBot.Core.Water;
using UnitsNet;

namespace CrewBot.Core.Rigs;

/// <summary>Works out the numbers of a rig.</summary>
internal static class RigArithmetic
{
    // A lift of an ice rod, from horizontal to over the shoulder: common practice.
    internal static readonly Length LiftOfRod = Length.FromCentimeters(60);

    /// <summary>Works out the numbers.</summary>
    /// <returns>Null when the lure never gets to that depth in that current.</returns>
    public static RigNumbers? Of(RigAsk ask, TiedRig tied, Lure lure, LineMaterial nylon)
    {
        var line = tied.Mainline.InWater;
        var slow = Drop.To(ask.Depth, lure.Slow, line, ask.Water);
        var fast = Drop.To(ask.Depth, lure.Fast, line, ask.Water);
        var hang = Blowback.AtDepth(ask.Depth, lure.Slow, line, ask.Current, ask.Water);
        if (slow is null || fast is null || hang is null)
        {
            return null;
        }

        var weakest = WeakestLink.Of(RigStrength.LinksOf(tied));
        var drag = DragSetting.For(weakest);
        var elastic = tied.Mainline.Elastic;
        var density = FreshWater.DensityAt(ask.Water);
        return new RigNumbers
        {
            Weakest = weakest,
            Drag = drag,
            NylonEquivalent = tied.Mainline.Material.Table.SameThicknessIn(nylon.Table, tied.Mainline.Test),
            Stretch = Stretch.Of(elastic, drag.High, ask.Depth),
            LiftAtLure = Stretch.ShareReachingLure(elastic, drag.High, ask.Depth, LiftOfRod),
            WaterDensity = density,
            WaterViscosity = FreshWater.ViscosityAt(ask.Water),
            LureDiameter = lure.Fast.Diameter,
            WetWeight = lure.Fast.SubmergedWeightIn(density),
            Settling = (Settling.TerminalSpeed(lure.Slow, ask.Water), Settling.TerminalSpeed(lure.Fast, ask.Water)),
            Drop = (fast.Value.Time, slow.Value.Time),
            Blowback = hang,
            Hole = HoleFor(ask.Species, ask.Size, ask.Hole),
        };
    }

    private static HoleFit HoleFor(Species species, FishSize size, Length hole)
    {
        var length = species.Lengths[size];
        var girth = GirthEstimate.FromLengthAndWeight(length, species.Weights[size]);
        return HoleFit.Of(hole, girth, length * species.BodyDepthShare, Length.Zero);
    }
}
