using CrewBot.Core.Knowledge;

namespace CrewBot.Core.Rigs;

/// <summary>Chooses the hook size.</summary>
internal static class HookChooser
{
    /// <summary>The lure's own hook, kept within what the species can take; or, with plain bait, one by the fish's size.</summary>
    public static HookSize Choose(RigAsk ask, Presentation presentation, LureStep step)
    {
        var range = ask.Species.Hooks;
        if (step.Hook is { } own)
        {
            return presentation.Trebles > 0 ? own : own < range.Low ? range.Low : own > range.High ? range.High : own;
        }

        var sizes = HookSize.TradeSizes.Where(size => size >= range.Low && size <= range.High).ToList();
        var place = ask.Size switch
        {
            FishSize.Small => 0,
            FishSize.Typical => (sizes.Count - 1) / 2,
            FishSize.Large => sizes.Count - 2,
            _ => sizes.Count - 1,
        };
        return sizes[Math.Clamp(place - (ask.Mood == Mood.Negative ? 1 : 0), 0, sizes.Count - 1)];
    }

    public static FormattableString Why(RigAsk ask, Presentation presentation, HookSize hook) => presentation.Trebles > 0
        ? $"Treble size {hook} is what a {presentation.Name} of that size carries."
        : (FormattableString)$"Size {hook}, inside {ask.Species.Hooks.Low} to {ask.Species.Hooks.High} for {ask.Species.Name}.";
}
