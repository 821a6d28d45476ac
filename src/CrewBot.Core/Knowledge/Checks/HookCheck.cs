using UnitsNet;

namespace CrewBot.Core.Knowledge.Checks;

/// <summary>What must hold of a hook's rating.</summary>
internal static class HookCheck
{
    public static IEnumerable<Misfit> Misfits(HookRating hook, TradeKnowledge all)
    {
        if (!(hook.Opens.Low > Force.Zero && hook.Opens.Low <= hook.Opens.High))
        {
            yield return new("opens", "Low lies above 0, and high is at least low.");
        }

        if (all.Hooks.First(other => other.Size == hook.Size).Key is var first && first != hook.Key)
        {
            yield return new("size", $"{first} is that size already: change that record instead.");
        }
    }
}
