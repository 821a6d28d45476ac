using CrewBot.Core.Rigs;

namespace CrewBot.Chat.Rigs;

/// <summary>Puts a crew's own knots into a rig that one of it has tied.</summary>
internal static class OwnKnots
{
    /// <summary>The rig with the ranges of this crew's knots.</summary>
    /// <returns>The rig, and each knot of it that the crew has its own range of, from the reel down.</returns>
    public static (TiedRig Rig, IReadOnlyList<OwnKnot> Own) In(TiedRig rig, CrewKnots crew)
    {
        var main = rig.Mainline.Material;
        var below = (rig.Leader?.Line ?? rig.Mainline).Material;
        OwnKnot?[] known =
        [
            rig.Join is { } join ? OwnKnot.Of(join, main, crew) : null,
            rig.Join is { } same && below.Key != main.Key ? OwnKnot.Of(same, below, crew) : null,
            OwnKnot.Of(rig.LureKnot, below, crew),
        ];
        var tied = rig with
        {
            Join = rig.Join is { } knot ? crew.AsTied(crew.AsTied(knot, main), below) : null,
            LureKnot = crew.AsTied(rig.LureKnot, below),
        };
        return (tied, [.. known.OfType<OwnKnot>().Distinct()]);
    }
}
