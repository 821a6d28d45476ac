using CrewBot.Chat.Quantities;
using UnitsNet;

namespace CrewBot.Chat.Derbies;

/// <summary>When not to hold a fish up for a photo.</summary>
/// <remarks>
/// Gills can freeze at any air temperature below freezing; below about 10 °F (−12 °C) the eyes are at risk too: a Wisconsin
/// fish-health specialist, quoted in the press.
/// </remarks>
internal static class ColdPhoto
{
    /// <summary>What to do instead.</summary>
    public const string Text = "Below 10 °F (-12 °C) no photo of a fish that goes back: gills and eyes freeze. A steward takes a crewmate's word.";

    private static readonly Temperature EyesFreeze = Temperature.FromDegreesCelsius(-12);

    /// <summary>The caution for a fish in this air; null where none is due.</summary>
    public static string? CautionFor(bool? kept, Temperature air, Showing show) => kept != true && air < EyesFreeze
        ? $"No photo if it goes back: at {show.Degrees(air)} gills and eyes freeze. A crewmate's word does; unhook it in the hole ({show.Degrees(air)} against {show.Degrees(EyesFreeze)})."
        : null;
}
