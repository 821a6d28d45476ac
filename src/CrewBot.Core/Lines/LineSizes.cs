using UnitsNet;

namespace CrewBot.Core.Lines;

/// <summary>Test against diameter for one line material, both ways.</summary>
/// <remarks>
/// Common practice, no standard fixes a diameter to a test. Within a series the strength per area is nearly constant,
/// so between two rows the test is taken as linear in the square of the diameter. Nothing is guessed beyond the last
/// row.
/// </remarks>
public sealed class LineSizes
{
    // Lets a value that went through another unit and back still count as the table's own end.
    private const double RoundingSlack = 1e-9;

    private readonly double[] _tests;
    private readonly double[] _squares;

    /// <summary>Builds the table.</summary>
    /// <param name="sizes">At least two rows, each stronger and thicker than the one before.</param>
    /// <exception cref="ArgumentException">
    /// There are fewer than two rows, a value is not above zero, or a row does not rise in both columns.
    /// </exception>
    public LineSizes(IEnumerable<LineSize> sizes)
    {
        Sizes = [.. sizes];
        _tests = [.. Sizes.Select(size => size.Test.Newtons)];
        _squares = [.. Sizes.Select(size => size.Diameter.Millimeters * size.Diameter.Millimeters)];
        if (Sizes.Count < 2 || Sizes.Any(size => size.Test.Newtons <= 0 || size.Diameter.Meters <= 0))
        {
            throw new ArgumentException("A line table needs two rows or more, with values above zero.", nameof(sizes));
        }

        for (var row = 1; row < Sizes.Count; row++)
        {
            if (_tests[row] <= _tests[row - 1] || _squares[row] <= _squares[row - 1])
            {
                throw new ArgumentException(
                    $"Row {row + 1} must be stronger and thicker than the row before it.", nameof(sizes));
            }
        }
    }

    /// <summary>The rows, weakest first.</summary>
    public IReadOnlyList<LineSize> Sizes { get; }

    /// <summary>Tells whether the table reaches from below to above a test.</summary>
    public bool Covers(Force test) => Within(test.Newtons, _tests);

    /// <summary>Tells whether the table reaches from below to above a diameter.</summary>
    public bool Covers(Length diameter) => Within(Square(diameter), _squares);

    /// <summary>Finds the diameter that goes with a test.</summary>
    /// <param name="test">A test within the table.</param>
    /// <exception cref="ArgumentOutOfRangeException">The table does not cover <paramref name="test"/>.</exception>
    public Length DiameterAt(Force test) => Covers(test)
        ? Length.FromMillimeters(Math.Sqrt(Interpolate(test.Newtons, _tests, _squares)))
        : throw new ArgumentOutOfRangeException(
            nameof(test), test.Newtons, $"Must be from {_tests[0]} to {_tests[^1]} N.");

    /// <summary>Finds the test that goes with a diameter.</summary>
    /// <param name="diameter">A diameter within the table.</param>
    /// <exception cref="ArgumentOutOfRangeException">The table does not cover <paramref name="diameter"/>.</exception>
    public Force TestAt(Length diameter) => Covers(diameter)
        ? Force.FromNewtons(Interpolate(Square(diameter), _squares, _tests))
        : throw new ArgumentOutOfRangeException(
            nameof(diameter),
            diameter.Millimeters,
            $"Must be from {Sizes[0].Diameter.Millimeters} to {Sizes[^1].Diameter.Millimeters} mm.");

    /// <summary>Finds the test of the line that is equally thick in another material.</summary>
    /// <param name="test">A test within this table.</param>
    /// <param name="other">The other material's table.</param>
    /// <returns>The test there; null when the other table has no line of that thickness.</returns>
    /// <exception cref="ArgumentOutOfRangeException">This table does not cover <paramref name="test"/>.</exception>
    public Force? SameThicknessIn(LineSizes other, Force test)
    {
        var diameter = DiameterAt(test);
        return other.Covers(diameter) ? other.TestAt(diameter) : null;
    }

    private static double Square(Length diameter) => diameter.Millimeters * Math.Abs(diameter.Millimeters);

    private static bool Within(double value, double[] column) =>
        value >= column[0] * (1 - RoundingSlack) && value <= column[^1] * (1 + RoundingSlack);

    private static double Interpolate(double value, double[] from, double[] to)
    {
        var row = Array.BinarySearch(from, value);
        if (row >= 0)
        {
            return to[row];
        }

        var above = Math.Clamp(~row, 1, from.Length - 1);
        var share = Math.Clamp((value - from[above - 1]) / (from[above] - from[above - 1]), 0, 1);
        return to[above - 1] + (share * (to[above] - to[above - 1]));
    }
}
