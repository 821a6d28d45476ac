using UnitsNet;

namespace CrewBot.Core.Lines;

/// <summary>Twist that line takes on when it slips off the end of a spool that does not turn.</summary>
public static class LineTwist
{
    /// <summary>
    /// Computes the turns put into line drawn off over the lip of a fixed spool: one a coil, L/(π D).
    /// </summary>
    /// <param name="drawnOff">Line drawn off, 0 or more.</param>
    /// <param name="coil">Diameter of the coils, above 0.</param>
    /// <returns>
    /// Turns. Winding back takes them out again, unless the drag slipped meanwhile; a turning spool adds none.
    /// </returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument lies outside its range.</exception>
    public static double TurnsOffFixedSpool(Length drawnOff, Length coil)
    {
        ValidRange.NotNegative(drawnOff.Meters, "m", nameof(drawnOff));
        ValidRange.Positive(coil.Meters, "m", nameof(coil));
        return drawnOff.Meters / (Math.PI * coil.Meters);
    }
}
