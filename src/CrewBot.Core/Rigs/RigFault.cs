namespace CrewBot.Core.Rigs;

/// <summary>One thing wrong with a rig.</summary>
/// <param name="Kind">Which.</param>
/// <param name="What">What is wrong, in a sentence.</param>
/// <param name="Fix">What to do about it, in a sentence.</param>
public sealed record RigFault(RigFaultKind Kind, FormattableString What, FormattableString Fix);
