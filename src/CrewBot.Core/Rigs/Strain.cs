using UnitsNet;

namespace CrewBot.Core.Rigs;

/// <summary>How far a rig from a box is from the one that suits, in doublings: a lure twice as heavy is one.</summary>
/// <remarks>The weights are judgement: another material counts as much as half a doubling, a hook size as a quarter.</remarks>
internal static class Strain
{
    private const double OtherMaterial = 0.5;
    private const double OtherHook = 0.25;
    private const double SameWithin = 1e-3;

    /// <summary>What is farther off than three times or a third does not stand in for it.</summary>
    private static readonly double Most = Math.Log2(3);

    public static double Of(Rig rig, Rig suited) =>
        Of(rig.Tied, suited.Tied) + Of(rig.Lure, suited.Lure) + (rig.HookComesWithLure ? 0 : Of(rig.Hook, suited.Hook));

    public static double Of(TiedRig tied, TiedRig suited) =>
        Of(tied.Mainline, suited.Mainline) + (tied.Leader, suited.Leader) switch
        {
            ({ } leader, { } other) => Of(leader.Line, other.Line),
            (null, null) => 0,
            _ => 1,
        };

    public static double Of(Lure lure, Lure suited) =>
        Doublings(lure.Weight.Kilograms, suited.Weight.Kilograms) + (lure.Material.Key == suited.Material.Key ? 0 : OtherMaterial);

    public static double Of(HookSize hook, HookSize suited) => OtherHook * Math.Abs(Place(hook) - Place(suited));

    public static bool StandsIn(Force test, Force suited) => Doublings(test.Newtons, suited.Newtons) <= Most;

    public static bool StandsIn(Mass weight, Mass suited) => Doublings(weight.Kilograms, suited.Kilograms) <= Most;

    public static double Of(LineChoice line, LineChoice suited) =>
        Doublings(line.Test.Newtons, suited.Test.Newtons) + (line.Material.Key == suited.Material.Key ? 0 : OtherMaterial);

    // What a label can't tell apart is the same.
    private static double Doublings(double one, double other) => Math.Abs(one - other) <= SameWithin * other ? 0 : Math.Abs(Math.Log2(one / other));

    private static int Place(HookSize hook) => HookSize.TradeSizes.Count(size => size < hook);
}
