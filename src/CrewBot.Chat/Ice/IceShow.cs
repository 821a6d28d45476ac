using System.Globalization;
using CrewBot.Chat.Commands;
using CrewBot.Core.Ice;
using UnitsNet;

namespace CrewBot.Chat.Ice;

/// <summary>Writes thicknesses so that no text flatters: measured rounded down, required rounded up, in both units.</summary>
internal static class IceShow
{
    public static string Measured(Length thickness, CrewUnits units) =>
        Pair(IceRounding.MeasuredInches(thickness), IceRounding.MeasuredCentimetres(thickness), units);

    public static string Required(Length thickness, CrewUnits units) =>
        Pair(IceRounding.RequiredInches(thickness), IceRounding.RequiredCentimetres(thickness), units);

    /// <summary>In the caller's unit alone, for a label.</summary>
    public static string RequiredAlone(Length thickness, CrewUnits units) => units == CrewUnits.Customary
        ? string.Create(CultureInfo.InvariantCulture, $"{IceRounding.RequiredInches(thickness):0.#} in")
        : string.Create(CultureInfo.InvariantCulture, $"{IceRounding.RequiredCentimetres(thickness):0.#} cm");

    public static string Age(TimeSpan age) => age switch
    {
        { TotalMinutes: < 1 } => "just now",
        { TotalMinutes: < 90 } => string.Create(CultureInfo.InvariantCulture, $"{Math.Floor(age.TotalMinutes):0} min ago"),
        { TotalHours: < 48 } => string.Create(CultureInfo.InvariantCulture, $"{Math.Floor(age.TotalHours):0} h ago"),
        _ => string.Create(CultureInfo.InvariantCulture, $"{Math.Floor(age.TotalDays):0} days ago"),
    };

    private static string Pair(decimal inches, decimal centimetres, CrewUnits units)
    {
        var (customary, metric) = (
            string.Create(CultureInfo.InvariantCulture, $"{inches:0.#} in"), string.Create(CultureInfo.InvariantCulture, $"{centimetres:0.#} cm"));
        return units == CrewUnits.Customary ? $"{customary} ({metric})" : $"{metric} ({customary})";
    }
}
