using UnitsNet;

namespace CrewBot.Core.Knowledge.Checks;

/// <summary>What must hold of a hook's rating.</summary>
internal static class HookCheck
{
    public static IEnumerable<Misfit> Misfits(HookRating hook, TradeKnowledge all) =>
    [
        .. FieldCheck.Alone(hook, all.Hooks, "size", "that size", other => other.Size == hook.Size),
        .. Strength(hook),
    ];

    private static IEnumerable<Misfit> Strength(HookRating hook)
    {
        if (!(hook.Opens.Low > Force.Zero && hook.Opens.Low <= hook.Opens.High))
        {
            yield return new("opens", "Low lies above 0, and high is at least low.");
        }
    }
}
