using UnitsNet;

namespace CrewBot.Core.Lines;

/// <summary>A length of line of one diameter: what a spool is rated for, or what is wound on it.</summary>
/// <param name="Length">Length, above 0.</param>
/// <param name="Diameter">Diameter, above 0.</param>
/// <exception cref="ArgumentOutOfRangeException">A value is not above zero.</exception>
public sealed record LineOnSpool(Length Length, Length Diameter)
{
    /// <summary>Length of the line.</summary>
    public Length Length { get; init => field = AboveZero(value, nameof(Length)); } = AboveZero(Length, nameof(Length));

    /// <summary>Diameter of the line.</summary>
    public Length Diameter { get; init => field = AboveZero(value, nameof(Diameter)); }
        = AboveZero(Diameter, nameof(Diameter));

    /// <summary>
    /// Length times diameter squared, m³: what a line takes up on a spool, but for the same factor in every line.
    /// </summary>
    internal double Bulk => Length.Meters * Diameter.Meters * Diameter.Meters;

    private static Length AboveZero(Length value, string parameter)
    {
        ValidRange.Positive(value.Meters, "m", parameter);
        return value;
    }
}
