using CrewBot.Core.Knowledge;

namespace CrewBot.Core.Rigs;

/// <summary>A lure with its place on the ladder of sizes that it comes in.</summary>
/// <param name="Lure">Weight and material.</param>
/// <param name="Usual">The first of its materials that is allowed.</param>
/// <param name="Trial">What it was tried by.</param>
/// <param name="Rung">The size it is.</param>
/// <param name="Start">The size that fish and mood start from.</param>
/// <param name="Wanted">The size that was asked for.</param>
/// <param name="Hooked">The lightest size whose hook holds the fish.</param>
internal sealed record ChosenLure(Lure Lure, LureMaterial Usual, LureTrial Trial, int Rung, int Start, int Wanted, int Hooked)
{
    /// <summary>What would suit, where this is only the nearest of a box; null where it suits.</summary>
    public Lure? Suited { get; init; }

    public LureStep Size => Lure.Presentation.Sizes[Rung];

    /// <summary>Nothing lighter gets down here, stays, holds the fish, or is made.</summary>
    public bool IsLightest => IsRaised || Rung == Hooked || !Trial.Does(Rung - 1);

    public bool IsHeaviest => Rung == Lure.Presentation.Sizes.Count - 1;

    /// <summary>It had to be heavier than what was asked for.</summary>
    public bool IsRaised => Rung > Wanted;
}
