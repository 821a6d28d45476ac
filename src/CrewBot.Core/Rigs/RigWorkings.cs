namespace CrewBot.Core.Rigs;

/// <summary>Says how a rig's numbers came about.</summary>
internal static class RigWorkings
{
    public static IEnumerable<Reason> Of(RigAsk ask, TiedRig tied, Lure lure, RigNumbers numbers)
    {
        yield return new(
            "weakest link",
            $"It is {numbers.Weakest.Place}: {numbers.Weakest.Low} at worst, label strength times the knot's range, smallest link counts (knots don't multiply).");
        yield return new(
            "drag", $"A quarter to a third of that low end, measured at the rod tip with a hand scale: {numbers.Drag.Low} to {numbers.Drag.High} (common practice).");
        if (numbers.NylonEquivalent is { } nylon)
        {
            yield return new(
                "diameter",
                $"{tied.Mainline.Test:test} {tied.Mainline.Material.Name} is {tied.Mainline.Diameter:fine}, about as thick as {nylon:test} nylon.");
        }

        yield return new(
            "stretch",
            $"At {ask.Depth} the line gives {numbers.Stretch:gap} under {numbers.Drag.High} (F L / E A): {numbers.LiftAtLure.Percent:0} % of a {RigArithmetic.LiftOfRod:gap} lift reaches the hook.");
        yield return new("drop", DropWhy(ask, lure, numbers));
        if (ask.Current.MetersPerSecond > 0)
        {
            yield return new(
                "current",
                $"{ask.Current} leans the line {numbers.Blowback.AtHole} at the hole and carries the lure {numbers.Blowback.Offset} off: nearly all of it is drag on the line.");
        }

        yield return new(
            "hole",
            $"A {ask.Size.ToString().ToLowerInvariant()} {ask.Species.Name} leaves {numbers.Hole.Margin:gap} of the {ask.Hole:gap} hole free (girth from length and weight, or body depth).");
    }

    private static FormattableString DropWhy(RigAsk ask, Lure lure, RigNumbers numbers) =>
        $"{lure.Weight:lure} at {numbers.WetWeight.Newtons * 1000:0} mN in {ask.Water} water sinks at {numbers.Settling.Slow} to {numbers.Settling.Fast} bare; with the line's own drag {numbers.Drop.Fast} to {numbers.Drop.Slow}. That it falls at {lure.Presentation.Fall.Low * 100:0} to {lure.Presentation.Fall.High * 100:0} % of a ball's speed is a judgement; free spool.";
}
