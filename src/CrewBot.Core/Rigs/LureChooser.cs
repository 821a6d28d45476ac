using CrewBot.Core.Knowledge;
using CrewBot.Core.Water;
using UnitsNet;

namespace CrewBot.Core.Rigs;

/// <summary>Chooses the size, weight and material of a lure.</summary>
internal sealed class LureChooser(TradeKnowledge knowledge)
{
    private static readonly Length Deep = Length.FromMeters(3);

    public Choice<ChosenLure> Choose(RigAsk ask, Presentation presentation, LineInWater line)
    {
        var materials = Allowed(ask, presentation);
        if (materials.Count == 0)
        {
            return (FormattableString)$"a {presentation.Name} comes in {string.Join(", ", presentation.Materials)}, all ruled out";
        }

        var trial = new LureTrial(ask, presentation, materials[0], line);
        var hooked = LightestThatHooks(ask, presentation);
        if (hooked == trial.Count)
        {
            return (FormattableString)$"no {presentation.Name} carries a hook for a {ask.Size.ToString().ToLowerInvariant()} {ask.Species.Name}";
        }

        var start = Math.Clamp(
            trial.From(presentation.StartWeight[ask.Species.Class]) + Steps(ask.Mood) + Steps(ask.Size), 0, trial.Count - 1);
        var wanted = Math.Clamp(start + ask.Step, 0, trial.Count - 1);
        if (trial.GetsDown(Math.Max(wanted, hooked)) is not { } down)
        {
            return (FormattableString)$"no {presentation.Name} up to {presentation.Sizes[^1].Weight:lure} gets down to {ask.Depth} in good time";
        }

        if (trial.Holds(down) is not { } rung)
        {
            return (FormattableString)$"no {presentation.Name} up to {presentation.Sizes[^1].Weight:lure} stays under the hole in {ask.Current} of current";
        }

        var tungsten = ask.Mood == Mood.Negative && ask.Depth.Meters >= Deep.Meters
            ? materials.Find(material => material.Key == "tungsten")
            : null;
        var lure = new Lure(presentation, presentation.Sizes[rung].Weight, tungsten ?? materials[0]);
        return new ChosenLure(lure, materials[0], trial, rung, start, wanted, hooked);
    }

    private List<LureMaterial> Allowed(RigAsk ask, Presentation presentation)
    {
        var allowed = new List<LureMaterial>(presentation.Materials.Count);
        foreach (var key in presentation.Materials)
        {
            var material = knowledge.LureMaterials[key];
            if (!ask.Without.Contains(key) && !(material.Lead && ask.Rules?.LeadBanned == true))
            {
                allowed.Add(material);
            }
        }

        return allowed;
    }

    /// <summary>The lightest size whose hook holds the fish; the number of sizes when none does.</summary>
    public int LightestThatHooks(RigAsk ask, Presentation presentation)
    {
        var pull = WorkingPull.Of(ask.Species.Weights[ask.Size]);
        var rung = 0;
        while (rung < presentation.Sizes.Count && Bends(HookChooser.Choose(ask, presentation, presentation.Sizes[rung]), pull))
        {
            rung++;
        }

        return rung;
    }

    /// <summary>Whether a hook holds the fish.</summary>
    public bool Holds(RigAsk ask, HookSize hook) => !Bends(hook, WorkingPull.Of(ask.Species.Weights[ask.Size]));

    private bool Bends(HookSize hook, Force pull) =>
        knowledge.Hooks.Find(rating => rating.Size == hook) is { } rating && rating.Opens.High < pull;

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
}
