using UnitsNet;

namespace CrewBot.Core.Lines;

/// <summary>How much line goes on a spool: equal volumes, L₁ d₁² = L₂ d₂².</summary>
/// <remarks>
/// Geometry. Braid diameters are nominal and packing varies: good to 10–15 % ("about"). Spools are customarily
/// stopped at about 95 % full, a fill of 0.95; 1 compares with the rating as it stands.
/// </remarks>
public static class SpoolFill
{
    /// <summary>Computes the length of another line that fills the spool.</summary>
    /// <param name="rated">What the spool is rated to hold.</param>
    /// <param name="diameter">Diameter of the new line, above 0.</param>
    /// <param name="fill">Share of the rated volume to fill, above 0 and at most 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument lies outside its range.</exception>
    public static Length LengthOf(LineOnSpool rated, Length diameter, double fill)
    {
        ValidRange.Positive(fill, 1, "of the spool", nameof(fill));
        return LengthTaking(rated.Bulk * fill, diameter, nameof(diameter));
    }

    /// <summary>Computes the length of backing to wind on under a top line.</summary>
    /// <param name="rated">What the spool is rated to hold.</param>
    /// <param name="top">The line that goes on last.</param>
    /// <param name="backing">Diameter of the backing, above 0.</param>
    /// <param name="fill">Share of the rated volume to fill, above 0 and at most 1.</param>
    /// <returns>The length, perhaps zero; null when the top line alone overfills the spool.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument lies outside its range.</exception>
    public static Length? BackingUnder(LineOnSpool rated, LineOnSpool top, Length backing, double fill)
    {
        ValidRange.Positive(fill, 1, "of the spool", nameof(fill));
        var length = LengthTaking((rated.Bulk * fill) - top.Bulk, backing, nameof(backing));
        return length.Meters < 0 ? null : length;
    }

    private static Length LengthTaking(double bulk, Length diameter, string parameter)
    {
        var metres = ValidRange.Positive(diameter.Meters, "m", parameter);
        return Length.FromMeters(bulk / (metres * metres));
    }
}
