namespace CrewBot.Core.Rigs;

/// <summary>The answer to a <see cref="RigAsk"/>.</summary>
/// <param name="First">The rig to tie.</param>
/// <param name="Alternatives">Up to two others worth a hole.</param>
public sealed record RigPlan(Rig First, IReadOnlyList<Rig> Alternatives);
