using CrewBot.Core.Knowledge;
using CrewBot.Core.Water;
using UnitsNet;

namespace CrewBot.Core.Rigs;

/// <summary>Says why a lure is the size, weight and material that it is.</summary>
internal static class LureReasons
{
    private const string SplitShotBody = "split shot";

    public static IEnumerable<Reason> Of(RigAsk ask, ChosenLure chosen, IEnumerable<SplitShot> shot)
    {
        var lure = chosen.Lure;
        yield return new("weight", Weight(ask, chosen));
        if (lure.Presentation.Body == SplitShotBody && Pinched(lure.Weight, shot) is { } pinched)
        {
            yield return new("shot", pinched);
        }

        if (lure.IsPlainMetal)
        {
            yield return new("material", Material(ask, chosen));
        }
    }

    private static FormattableString Weight(RigAsk ask, ChosenLure chosen)
    {
        var sizes = chosen.Lure.Presentation.Sizes;
        var weight = chosen.Lure.Weight;
        if (chosen.Suited is { } suited)
        {
            return Strain.Of(chosen.Lure, suited) == 0
                ? $"{weight:lure} is what suits, and your box holds it."
                : (FormattableString)$"{weight:lure} {chosen.Lure.Material.Name} is what your box holds nearest to the {suited.Weight:lure} {suited.Material.Name} that suits, and it gets down.";
        }

        var from = sizes[chosen.Start].Weight;
        if (chosen.Rung == chosen.Start)
        {
            return $"{weight:lure} is where a {chosen.Lure.Presentation.Name} starts for {Word(ask.Mood)} {ask.Species.Name}, and it gets down.";
        }

        if (chosen.Rung > 0 && chosen.Rung == chosen.Hooked)
        {
            return $"{weight:lure} instead of {from:lure}: a lighter one carries a hook that a {Word(ask.Size)} {ask.Species.Name} bends open.";
        }

        return chosen.IsRaised
            ? $"{weight:lure} instead of {from:lure}: nothing lighter reaches {ask.Depth} within {LureFit.LongestDrop(ask.Depth)} and stays within {LureFit.GreatestLean} of straight down."
            : (FormattableString)$"{weight:lure}, {Math.Abs(chosen.Rung - chosen.Start)} {(chosen.Rung > chosen.Start ? "heavier" : "lighter")} than the {from:lure} to start from, as you asked.";
    }

    // The two scales use the same letters for different masses, so both are named.
    private static FormattableString? Pinched(Mass weight, IEnumerable<SplitShot> shot)
    {
        var pinches = Enum.GetValues<ShotScale>()
            .Select(scale => ShotPinch.For(weight, shot, scale))
            .OfType<ShotPinch>()
            .Select(pinch => pinch.Count == 1 ? $"one {pinch.Shot.Name}" : $"{pinch.Count} × {pinch.Shot.Name}")
            .ToList();
        return pinches.Count > 0
            ? (FormattableString)$"{weight:lure} is {string.Join(", or ", pinches)}, to a tenth; pinch it a forearm above the hook."
            : null;
    }

    private static FormattableString Material(RigAsk ask, ChosenLure chosen)
    {
        var (lure, usual) = (chosen.Lure, chosen.Usual);
        if (lure.Material.Key == usual.Key)
        {
            return usual.Key == lure.Presentation.Materials[0]
                ? $"{Capital(usual.Name)} does for {Word(ask.Mood)} fish here."
                : (FormattableString)$"{Capital(usual.Name)}, since {lure.Presentation.Materials[0]} is ruled out.";
        }

        var compared = new MaterialComparison(usual.Density, lure.Material.Density, lure.Weight);
        return $"{Capital(lure.Material.Name)}: {compared.OtherDiameter:fine} across where {usual.Name} would be {compared.UsualDiameter:fine}, a smaller mouthful for fish that look twice, and quicker down.";
    }

    private static string Word<T>(T value)
        where T : struct, Enum =>
        value.ToString().ToLowerInvariant();

    private static string Capital(string word) => char.ToUpperInvariant(word[0]) + word[1..];
}
