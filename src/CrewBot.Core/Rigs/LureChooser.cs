using CrewBot.Core.Knowledge;
using CrewBot.Core.Water;
using UnitsNet;

namespace CrewBot.Core.Rigs;

/// <summary>Chooses the size, weight and material of a lure.</summary>
internal sealed class LureChooser(TradeKnowledge knowledge)
{
    private const double SameWithinKilograms = 1e-6;
    private const string SplitShotBody = "split shot";

    private static readonly Length Deep = Length.FromMeters(3);
    private static readonly Density NeutralLine = Density.FromKilogramsPerCubicMeter(1000);

    public Choice<ChosenLure> Choose(RigAsk ask, Presentation presentation, LineInWater line)
    {
        var materials = presentation.Materials
            .Select(key => knowledge.LureMaterials[key])
            .Where(material => !ask.Without.Contains(material.Key) && !(material.Lead && ask.Rules?.LeadBanned == true))
            .ToList();
        if (materials.Count == 0)
        {
            return (FormattableString)$"a {presentation.Name} comes in {string.Join(", ", presentation.Materials)}, all ruled out";
        }

        var usual = materials[0];
        var ladder = presentation.Sizes.Select(size => size.Weight).ToList();
        var start = Math.Clamp(
            RungOf(presentation.StartWeight[ask.Species.Class], ladder) + Steps(ask.Mood) + Steps(ask.Size), 0, ladder.Count - 1);
        var probe = new Lure(presentation, ladder[0], usual);
        var hindrance = Unhelpful(line);
        var reaches = LureWeight.LightestToReach(
            ladder, probe.Density, presentation.Fall.Low, hindrance, ask.Depth, LureFit.LongestDrop(ask.Depth), ask.Water);
        if (reaches is null)
        {
            return (FormattableString)$"no {presentation.Name} up to {ladder[^1]:lure} gets down to {ask.Depth} in good time";
        }

        var holds = ask.Current.MetersPerSecond > 0
            ? LureWeight.LightestToHold(
                ladder, probe.Density, presentation.Fall.Low, hindrance, ask.Depth, ask.Current, LureFit.GreatestLean, ask.Water)
            : reaches;
        if (holds is null)
        {
            return (FormattableString)$"no {presentation.Name} up to {ladder[^1]:lure} stays under the hole in {ask.Current} of current";
        }

        var pull = WorkingPull.Of(ask.Species.Weights[ask.Size]);
        var hooked = presentation.Sizes.TakeWhile(size => Bends(HookChooser.Choose(ask, presentation, size), pull)).Count();
        if (hooked == ladder.Count)
        {
            return (FormattableString)$"no {presentation.Name} carries a hook for a {Word(ask.Size)} {ask.Species.Name}";
        }

        var sinks = Math.Max(RungOf(reaches.Value, ladder), RungOf(holds.Value, ladder));
        var needed = Math.Max(sinks, hooked);
        var rung = Math.Max(needed, Math.Clamp(start + ask.Step, 0, ladder.Count - 1));
        var material = ask.Mood == Mood.Negative && ask.Depth >= Deep
            ? materials.FirstOrDefault(candidate => candidate.Key == "tungsten", usual)
            : usual;
        var lure = new Lure(presentation, ladder[rung], material);
        return new ChosenLure(
            lure,
            presentation.Sizes[rung],
            IsLightest: rung == needed || rung == 0,
            IsHeaviest: rung == ladder.Count - 1,
            [
                new("weight", Weight(ask, presentation, rung, start, sinks, hooked)),
                .. Shot(presentation, ladder[rung]),
                .. lure.IsPlainMetal ? [new Reason("material", Material(ask, lure, usual))] : Array.Empty<Reason>(),
            ]);
    }

    // Quantities are compared by their number: their own equality tells 16 oz from 1 lb, and costs memory.
    private static int RungOf(Mass weight, List<Mass> ladder) => ladder.FindIndex(rung => rung.Kilograms > weight.Kilograms - SameWithinKilograms);

    // The two scales use the same letters for different masses, so both are named.
    private IEnumerable<Reason> Shot(Presentation presentation, Mass weight)
    {
        if (presentation.Body != SplitShotBody)
        {
            return [];
        }

        var pinches = Enum.GetValues<ShotScale>()
            .Select(scale => ShotPinch.For(weight, knowledge.SplitShot, scale))
            .OfType<ShotPinch>()
            .Select(pinch => pinch.Count == 1 ? $"one {pinch.Shot.Name}" : $"{pinch.Count} × {pinch.Shot.Name}")
            .ToList();
        return pinches.Count > 0
            ? [new Reason("shot", $"{weight:lure} is {string.Join(", or ", pinches)}, to a tenth; pinch it a forearm above the hook.")]
            : [];
    }

    private bool Bends(HookSize hook, Force pull) =>
        knowledge.Hooks.FirstOrDefault(rating => rating.Size == hook) is { } rating && rating.Opens.High < pull;

    // Sinking line pulls a lure down the more of it is out. Counted on, deeper water would ask for a lighter lure.
    private static LineInWater Unhelpful(LineInWater line) =>
        line.Density > NeutralLine ? line with { Density = NeutralLine } : line;

    private static FormattableString Weight(
        RigAsk ask, Presentation presentation, int rung, int start, int sinks, int hooked)
    {
        var weight = presentation.Sizes[rung].Weight;
        var from = presentation.Sizes[start].Weight;
        return rung == start
            ? $"{weight:lure} is where a {presentation.Name} starts for {Word(ask.Mood)} {ask.Species.Name}, and it gets down."
            : rung == hooked
                ? $"{weight:lure} instead of {from:lure}: a lighter one carries a hook that a {Word(ask.Size)} {ask.Species.Name} bends open."
            : rung == sinks
                ? $"{weight:lure} instead of {from:lure}: nothing lighter reaches {ask.Depth} within {LureFit.LongestDrop(ask.Depth)} and stays within {LureFit.GreatestLean} of straight down."
                : (FormattableString)$"{weight:lure}, {Math.Abs(rung - start)} {(rung > start ? "heavier" : "lighter")} than the {from:lure} to start from, as you asked.";
    }

    private static FormattableString Material(RigAsk ask, Lure lure, LureMaterial usual)
    {
        if (lure.Material.Key == usual.Key)
        {
            return usual.Key == lure.Presentation.Materials[0]
                ? $"{Capital(usual.Name)} does for {Word(ask.Mood)} fish here."
                : (FormattableString)$"{Capital(usual.Name)}, since {lure.Presentation.Materials[0]} is ruled out.";
        }

        var compared = new MaterialComparison(usual.Density, lure.Material.Density, lure.Weight);
        return $"{Capital(lure.Material.Name)}: {compared.OtherDiameter:fine} across where {usual.Name} would be {compared.UsualDiameter:fine}, a smaller mouthful for fish that look twice, and quicker down.";
    }

    private static int Steps(Mood mood) => mood switch
    {
        Mood.Negative => -1,
        Mood.Positive => 1,
        _ => 0,
    };

    private static int Steps(FishSize size) => size switch
    {
        FishSize.Small => -1,
        FishSize.Large => 1,
        FishSize.Trophy => 2,
        _ => 0,
    };

    private static string Word<T>(T value)
        where T : struct, Enum =>
        value.ToString().ToLowerInvariant();

    private static string Capital(string word) => char.ToUpperInvariant(word[0]) + word[1..];
}
