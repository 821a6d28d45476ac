using CrewBot.Chat.Commands;
using CrewBot.Core.Rigs;
using UnitsNet;

namespace CrewBot.Chat.Rigs;

/// <summary>The numbers that rig and line replies hold.</summary>
public static class RigFigures
{
    public static readonly FigureKey<Length> Depth = new("depth", "m", "depth of the water", x => x.Meters);
    public static readonly FigureKey<Temperature> WaterTemperature = new("water.temperature", "C", "temperature of the water", x => x.DegreesCelsius);
    public static readonly FigureKey<Density> WaterDensity = new("water.density", "kg/m3", "density of the water", x => x.KilogramsPerCubicMeter);
    public static readonly FigureKey<DynamicViscosity> WaterViscosity = new("water.viscosity", "mPa.s", "dynamic viscosity of the water", x => x.MillipascalSeconds);
    public static readonly FigureKey<Force> LineTest = new("line.test", "lb", "mainline's labelled test", x => x.PoundsForce);
    public static readonly FigureKey<Length> LineDiameter = new("line.diameter", "mm", "mainline's nominal diameter", x => x.Millimeters);
    public static readonly FigureKey<Force> NylonEquivalent = new("line.mono-equivalent-test", "lb", "test of the nylon monofilament that is as thick", x => x.PoundsForce);
    public static readonly FigureKey<Force> LeaderTest = new("leader.test", "lb", "leader's labelled test", x => x.PoundsForce);
    public static readonly FigureKey<Length> LeaderLength = new("leader.length", "m", "length of the leader", x => x.Meters);
    public static readonly FigureKey<Mass> LureWeight = new("lure.weight", "g", "mass of the lure, jig, shot or sinker", x => x.Grams);
    public static readonly FigureKey<Length> LureLength = new("lure.length", "mm", "length of the lure, or of a dead bait", x => x.Millimeters);
    public static readonly FigureKey<Length> LureDiameter = new("lure.diameter", "mm", "diameter of a ball of the lure's mass and density", x => x.Millimeters);
    public static readonly FigureKey<Force> WetWeight = new("lure.wet-weight", "N", "weight of the lure in the water", x => x.Newtons);
    public static readonly FigureKey<Length> LureHeight = new("lure.height", "m", "how far from bottom, fish or ice the lure hangs", x => x.Meters);
    public static readonly FigureKey<Length> HookSpacing = new("hook.spacing", "mm", "least distance between the two trebles of a dead bait", x => x.Millimeters);
    public static readonly FigureKey<Length> HookSpacingMost = new("hook.spacing.most", "mm", "greatest distance between the two trebles of a dead bait", x => x.Millimeters);
    public static readonly FigureKey<Speed> SettlingSpeed = new("settling.speed", "m/s", "sinking speed of the lure without line, slow end", x => x.MetersPerSecond);
    public static readonly FigureKey<Speed> SettlingSpeedFast = new("settling.speed.fast", "m/s", "the same, fast end", x => x.MetersPerSecond);
    public static readonly FigureKey<Duration> DropTime = new("drop.time", "s", "time to depth with the line's drag, slow end", x => x.Seconds);
    public static readonly FigureKey<Duration> DropTimeFast = new("drop.time.fast", "s", "the same, fast end", x => x.Seconds);
    public static readonly FigureKey<Speed> DropEndSpeed = new("drop.end-speed", "m/s", "speed on arrival, slow end", x => x.MetersPerSecond);
    public static readonly FigureKey<Angle> BlowbackAngle = new("blowback.angle", "deg", "lean of the line from straight down, at the hole", x => x.Degrees);
    public static readonly FigureKey<Length> BlowbackOffset = new("blowback.offset", "m", "how far downstream of the hole the lure hangs", x => x.Meters);
    public static readonly FigureKey<Length> BlowbackDepth = new("blowback.depth", "m", "how deep the lure hangs in a current", x => x.Meters);
    public static readonly FigureKey<Length> LineOut = new("line.out", "m", "line in the water from hole to lure", x => x.Meters);
    public static readonly FigureKey<Force> WeakestLow = new("weakest-link.low", "N", "pull at which the weakest link may part", x => x.Newtons);
    public static readonly FigureKey<Force> WeakestHigh = new("weakest-link.high", "N", "pull at which it has surely parted", x => x.Newtons);
    public static readonly FigureKey<Force> DragLow = new("drag.low", "N", "drag to set, from", x => x.Newtons);
    public static readonly FigureKey<Force> DragHigh = new("drag.high", "N", "drag to set, to", x => x.Newtons);
    public static readonly FigureKey<Length> StretchOfLine = new("stretch", "m", "how far the mainline gives under the higher drag at depth", x => x.Meters);
    public static readonly FigureKey<Ratio> LiftShare = new("lift.share", "%", "share of a rod's lift that reaches the lure", x => x.Percent);
    public static readonly FigureKey<Length> HoleDiameter = new("hole.diameter", "mm", "diameter of the hole", x => x.Millimeters);
    public static readonly FigureKey<Length> HoleMargin = new("hole.margin", "mm", "what the fish leaves free of the hole", x => x.Millimeters);
    public static readonly FigureKey<Length> Spacing = new("spacing", "m", "distance between two holes", x => x.Meters);
    public static readonly FigureKey<Length> SpoolLength = new("spool.length", "m", "length of line the spool takes", x => x.Meters);
    public static readonly FigureKey<Length> SpoolBacking = new("spool.backing", "m", "backing under the top line", x => x.Meters);
    public static readonly FigureKey<double> CostPerSeason = new("cost.season", "money", "cost of the line for a season, in the crew's money", x => x);
    public static readonly FigureKey<double> WaterUptake = new("line.water-uptake", "%", "water taken up at saturation, most", x => x);
    public static readonly FigureKey<Ratio> Reflectance = new("line.reflectance", "%", "light thrown back by the line's surface, straight on", x => x.Percent);

    public static readonly FigureKey<double> KnotLow = new("knot.low", "%", "least share of the label that a knot leaves as the crew ties it", x => 100 * x);
    public static readonly FigureKey<double> KnotHigh = new("knot.high", "%", "greatest share of the label that a knot leaves as the crew ties it", x => 100 * x);
    public static readonly FigureKey<double> KnotBreaks = new("knot.break-offs", "", "the crew's measured break-offs at that knot", x => x);
    public static readonly FigureKey<double> LikeBreaks = new("break-offs", "", "how often the crew has seen such a break", x => x);

    /// <summary>Every key, in the order of the docs.</summary>
    public static IReadOnlyList<FigureKey> All { get; } =
    [
        Depth, WaterTemperature, WaterDensity, WaterViscosity, LineTest, LineDiameter, NylonEquivalent, LeaderTest, LeaderLength,
        LureWeight, LureLength, LureDiameter, WetWeight, LureHeight, HookSpacing, HookSpacingMost, SettlingSpeed, SettlingSpeedFast,
        DropTime, DropTimeFast, DropEndSpeed, BlowbackAngle, BlowbackOffset, BlowbackDepth, LineOut, WeakestLow, WeakestHigh,
        DragLow, DragHigh, StretchOfLine, LiftShare, HoleDiameter, HoleMargin, Spacing, SpoolLength, SpoolBacking, CostPerSeason,
        WaterUptake, Reflectance, KnotLow, KnotHigh, KnotBreaks, LikeBreaks,
    ];

    /// <summary>The numbers of one rig.</summary>
    internal static IEnumerable<Figure> Of(Rig rig, string prefix)
    {
        var numbers = rig.Numbers;
        yield return LineTest.Of(rig.Tied.Mainline.Test, prefix);
        yield return LineDiameter.Of(rig.Tied.Mainline.Diameter, prefix);
        if (numbers.NylonEquivalent is { } nylon)
        {
            yield return NylonEquivalent.Of(nylon, prefix);
        }

        if (rig.Tied.Leader is { } leader)
        {
            yield return LeaderTest.Of(leader.Line.Test, prefix);
            yield return LeaderLength.Of(leader.Length, prefix);
        }

        yield return LureWeight.Of(rig.Lure.Weight, prefix);
        yield return LureLength.Of(rig.LureLength, prefix);
        yield return LureDiameter.Of(numbers.LureDiameter, prefix);
        yield return WetWeight.Of(numbers.WetWeight, prefix);
        yield return LureHeight.Of(rig.Height, prefix);
        yield return SettlingSpeed.Of(numbers.Settling.Slow, prefix);
        yield return SettlingSpeedFast.Of(numbers.Settling.Fast, prefix);
        yield return DropTime.Of(numbers.Drop.Slow, prefix);
        yield return DropTimeFast.Of(numbers.Drop.Fast, prefix);
        yield return BlowbackAngle.Of(numbers.Blowback.AtHole, prefix);
        yield return BlowbackOffset.Of(numbers.Blowback.Offset, prefix);
        yield return WeakestLow.Of(numbers.Weakest.Low, prefix);
        yield return WeakestHigh.Of(numbers.Weakest.High, prefix);
        yield return DragLow.Of(numbers.Drag.Low, prefix);
        yield return DragHigh.Of(numbers.Drag.High, prefix);
        yield return StretchOfLine.Of(numbers.Stretch, prefix);
        yield return LiftShare.Of(numbers.LiftAtLure, prefix);
        if (RigWords.SpacingOf(rig) is { } spacing)
        {
            yield return HookSpacing.Of(spacing.Least, prefix);
            yield return HookSpacingMost.Of(spacing.Most, prefix);
        }
    }

    /// <summary>The numbers that hold for every rig of one question.</summary>
    internal static IEnumerable<Figure> Of(RigAsk ask, Rig rig) =>
    [
        Depth.Of(ask.Depth),
        WaterTemperature.Of(ask.Water),
        WaterDensity.Of(rig.Numbers.WaterDensity),
        WaterViscosity.Of(rig.Numbers.WaterViscosity),
        HoleDiameter.Of(ask.Hole),
        HoleMargin.Of(rig.Numbers.Hole.Margin),
    ];
}
