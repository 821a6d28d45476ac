using CrewBot.Core.Derbies.Scoring;

namespace CrewBot.Core.Derbies;

/// <summary>One line of the standings.</summary>
/// <param name="Rank">The place; half places occur where places are shared out.</param>
/// <param name="IsShared">Somebody else has the same place.</param>
/// <param name="Tally">What it rests on.</param>
/// <param name="PartedBy">What parted an equal total from the line above; null where totals differ, or nothing did.</param>
public sealed record Standing(decimal Rank, bool IsShared, Tally Tally, TieBreak? PartedBy);
