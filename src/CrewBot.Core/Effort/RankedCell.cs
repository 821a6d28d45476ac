namespace CrewBot.Core.Effort;

/// <summary>A cell in its place.</summary>
/// <param name="Cell">The cell.</param>
/// <param name="Posterior">What is believed of its rate.</param>
/// <param name="Credible">The 95 % credible interval; cells are ranked by its low end.</param>
/// <param name="ChanceOverFirst">Probability that its rate exceeds the first cell's; 0.5 for the first itself.</param>
public sealed record RankedCell(EffortCell Cell, CatchPosterior Posterior, RateInterval Credible, double ChanceOverFirst);
