namespace CrewBot.Core.Effort;

/// <summary>Fishing told apart by some dimensions.</summary>
/// <param name="Cells">Every cell in which lines were down, in no order that matters.</param>
/// <param name="Unrecorded">Fish and line-hours of spells of which one of the dimensions is not known.</param>
public sealed record EffortCount(IReadOnlyList<CellCount> Cells, Tally Unrecorded);
