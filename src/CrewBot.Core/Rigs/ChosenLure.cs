using CrewBot.Core.Knowledge;

namespace CrewBot.Core.Rigs;

/// <summary>A lure with the step of the ladder it came from.</summary>
/// <param name="Lure">Weight and material.</param>
/// <param name="Size">The step.</param>
/// <param name="IsLightest">Nothing lighter would do.</param>
/// <param name="IsHeaviest">It is not made heavier.</param>
/// <param name="Reasons">Why.</param>
internal sealed record ChosenLure(Lure Lure, LureStep Size, bool IsLightest, bool IsHeaviest, IReadOnlyList<Reason> Reasons);
