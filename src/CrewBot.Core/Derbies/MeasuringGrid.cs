using CrewBot.Core.Fish;

namespace CrewBot.Core.Derbies;

/// <summary>The lines of the board: lengths are scored in whole steps, so totals never drift.</summary>
/// <param name="Step">Distance between two lines, above zero: 1/4 in, 1/2 cm.</param>
/// <param name="Rounding">Which line counts for a fish between two.</param>
public sealed record MeasuringGrid(ExactLength Step, Rounding Rounding = Rounding.Down)
{
    /// <summary>What a fish scores: rounded first, then less the penalty, never below zero.</summary>
    /// <param name="measured">As measured; a length exactly on a line scores that line.</param>
    /// <param name="penalty">A multiple of the step; what is left over is dropped.</param>
    /// <exception cref="ArgumentOutOfRangeException">The step is zero.</exception>
    public ExactLength Score(ExactLength measured, long penalty = 0)
    {
        var steps = Rounding switch
        {
            Rounding.Down => measured.WholeSteps(Step),
            Rounding.Nearest => (measured.Nanometres + (Step.Nanometres / 2)) / Step.Nanometres,
            _ => (measured.Nanometres + Step.Nanometres - 1) / Step.Nanometres,
        };
        var scored = Math.Max(0, steps - (penalty / Step.Nanometres));
        return new ExactLength(scored * Step.Nanometres, Step.Unit);
    }

    /// <summary>Does a length lie on a line of the board?</summary>
    public bool IsOnLine(ExactLength measured) => measured.Nanometres % Step.Nanometres == 0;
}
