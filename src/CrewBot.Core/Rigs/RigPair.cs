using UnitsNet;

namespace CrewBot.Core.Rigs;

/// <summary>Lines that work together.</summary>
/// <param name="Caller">The one that brings fish in; the only one where one line is allowed.</param>
/// <param name="Sitter">The one beside it that they eat; null where one line is allowed.</param>
/// <param name="SetLines">Further lines, each under a tip-up or on a set rod.</param>
/// <param name="Spacing">From the caller's hole to the sitter's.</param>
/// <param name="SetSpacing">From the caller's hole to a set line's.</param>
public sealed record RigPair(Rig Caller, Rig? Sitter, IReadOnlyList<Rig> SetLines, Length Spacing, Length SetSpacing);
