using CrewBot.Core.Knowledge;
using UnitsNet;

namespace CrewBot.Core.Fish;

/// <summary>Weight of a fish from its length and girth.</summary>
public static class GirthWeight
{
    /// <summary>Computes W = L G²/divisor, in inches and pounds, with the species' divisor or else the usual 800.</summary>
    /// <param name="species">The species; pike-shaped fish have 900.</param>
    /// <param name="total">Total length, above 0.</param>
    /// <param name="girth">Around the thickest part, above 0.</param>
    /// <remarks>
    /// Common practice: 800 with total length stands in the text of the Maryland fishing regulations, 900 for pike on a
    /// regional page; no measured origin of either was found. Expect ±10–15 % (judgement) and never use it for a record.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">Length or girth is not above 0.</exception>
    public static Mass Of(Species species, Length total, Length girth) =>
        Of(total, girth, species.GirthDivisor ?? GirthEstimate.UsualDivisor);

    /// <summary>Computes W = L G²/divisor, in inches and pounds.</summary>
    /// <param name="total">Total length, above 0.</param>
    /// <param name="girth">Around the thickest part, above 0.</param>
    /// <param name="divisor">From 500 to 1200.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument lies outside its range.</exception>
    public static Mass Of(Length total, Length girth, double divisor)
    {
        ValidRange.Positive(total.Inches, "in", nameof(total));
        ValidRange.Positive(girth.Inches, "in", nameof(girth));
        ValidRange.Closed(
            divisor, GirthEstimate.LeastDivisor, GirthEstimate.GreatestDivisor, "in³/lb", nameof(divisor));
        return Mass.FromPounds(total.Inches * girth.Inches * girth.Inches / divisor);
    }
}
