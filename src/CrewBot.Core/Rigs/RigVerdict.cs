namespace CrewBot.Core.Rigs;

/// <summary>What the checker says of a rig.</summary>
/// <param name="Weakest">Where it gives way and at what pull.</param>
/// <param name="Drag">What to set the drag to.</param>
/// <param name="Lost">What stays in the fish when it gives way there, in a clause.</param>
/// <param name="Faults">Worst first; empty when nothing is wrong.</param>
public sealed record RigVerdict(WeakestLink Weakest, DragSetting Drag, string Lost, IReadOnlyList<RigFault> Faults);
