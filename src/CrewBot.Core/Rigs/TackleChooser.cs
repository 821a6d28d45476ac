using CrewBot.Core.Knowledge;
using UnitsNet;

namespace CrewBot.Core.Rigs;

/// <summary>Puts what an angler has in the place of what suits: the nearest that passes the checker.</summary>
/// <param name="lines">Ties the lines.</param>
/// <param name="lures">Knows which hooks hold.</param>
internal sealed class TackleChooser(LineChooser lines, LureChooser lures)
{
    /// <summary>The nearest lines; null when none will do.</summary>
    public RigParts? NearestLines(Tackle own, RigAsk ask, Presentation presentation, bool biteLeader, RigParts suited)
    {
        var mains = own.Lines.Where(line =>
            line.Material.Use != LineUse.Bite && IsAllowed(ask, line) && Strain.StandsIn(line.Test, suited.Tied.Mainline.Test));
        var leaders = own.Leaders.Where(line =>
            (line.Material.Use == LineUse.Bite) == biteLeader && IsAllowed(ask, line)
            && (suited.Tied.Leader is not { Line.Test: var test } || Strain.StandsIn(line.Test, test)));
        var situation = new RigSituation { Species = ask.Species, Size = ask.Size, Water = ask.Water };
        // Below a swivel there may be more of the mainline, but not braid for fish that shy from it.
        IEnumerable<LineChoice?> Below(LineChoice main) =>
            biteLeader || (main.Material.Use == LineUse.Main && ask.Species.LineShyness != Shyness.Low) ? leaders : leaders.Cast<LineChoice?>().Append(null);
        return mains
            .SelectMany(main => Below(main).SelectMany(leader => lines.Tied(ask, presentation, main, leader)))
            .OrderBy(tied => Strain.Of(tied, suited.Tied))
            .FirstOrDefault(tied => RigChecker.Check(tied, situation).Faults.Count == 0) is { } found
                ? lines.PartsOf(ask, presentation, found, suited)
                : null;
    }

    /// <summary>The nearest lure of a presentation; null when none will do.</summary>
    public ChosenLure? NearestLure(Tackle own, RigAsk ask, Presentation presentation, RigParts parts, ChosenLure suited) => own.Lures
        .Where(lure => lure.Presentation.Key == presentation.Key && Strain.StandsIn(lure.Weight, suited.Lure.Weight))
        .Where(lure => !ask.Without.Contains(lure.Material.Key) && !(lure.Material.Lead && ask.Rules?.LeadBanned == true))
        .GroupBy(lure => lure.Material.Key)
        .SelectMany(same => Fitting(ask, presentation, parts, suited, same.First().Material, [.. same.Select(lure => lure.Weight)]))
        .MinBy(chosen => Strain.Of(chosen.Lure, suited.Lure));

    /// <summary>The nearest hook for plain bait; null when none will do.</summary>
    public HookSize? NearestHook(Tackle own, RigAsk ask, HookSize suited)
    {
        var fitting = own.Hooks.Where(hook => hook >= ask.Species.Hooks.Low && hook <= ask.Species.Hooks.High && lures.Holds(ask, hook)).ToList();
        return fitting.Count > 0 ? fitting.MinBy(hook => Strain.Of(hook, suited)) : null;
    }

    // The presentation in the sizes that are there: whatever asks for a heavier or a lighter one stays in the box.
    private IEnumerable<ChosenLure> Fitting(
        RigAsk ask, Presentation presentation, RigParts parts, ChosenLure suited, LureMaterial material, Mass[] weights)
    {
        var sizes = weights.DistinctBy(weight => weight.Kilograms).OrderBy(weight => weight.Kilograms).Select(weight => StepOf(presentation, weight)).ToList();
        var own = presentation with { Sizes = sizes, Materials = [material.Key] };
        var trial = new LureTrial(ask, own, material, parts.Tied.Mainline.InWater);
        var hooked = lures.LightestThatHooks(ask, own);
        return Enumerable.Range(0, sizes.Count)
            .Where(size => size >= hooked && trial.Does(size))
            .Select(size => new ChosenLure(new Lure(own, sizes[size].Weight, material), material, trial, size, size, size, hooked) { Suited = suited.Lure });
    }

    private static LureStep StepOf(Presentation presentation, Mass weight) => presentation.Sizes
        .MinBy(size => Math.Abs(Math.Log(size.Weight.Kilograms / weight.Kilograms)))! with
    { Weight = weight };

    private static bool IsAllowed(RigAsk ask, LineChoice line) => !ask.Without.Contains(line.Material.Key);
}
