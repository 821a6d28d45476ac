using CrewBot.Chat.Commands;
using CrewBot.Core.Weather;
using UnitsNet;

namespace CrewBot.Chat.Ice;

/// <summary>The figures of replies about ice.</summary>
public static class IceFigures
{
    public static readonly FigureKey<double> Report = new("ice.report", "", "the report's number", x => x);
    public static readonly FigureKey<Length> Effective = new("ice.effective", "cm", "least thickness of clear ice that what was measured counts as", x => x.Centimeters);
    public static readonly FigureKey<Length> Least = new("ice.least", "cm", "least ice in any hole, whatever its kind", x => x.Centimeters);
    public static readonly FigureKey<Length> Most = new("ice.most", "cm", "most ice in any hole, whatever its kind", x => x.Centimeters);
    public static readonly FigureKey<Length> Required = new("ice.required", "cm", "thickness of new clear ice that published rules ask for", x => x.Centimeters);
    public static readonly FigureKey<Mass> Load = new("ice.load", "kg", "everything on the ice at the spot", x => x.Kilograms);
    public static readonly FigureKey<double> Told = new("ice.told", "", "channels that a report goes to", x => x);
    public static readonly FigureKey<DegreeDays> Frost = new("ice.frost", "°C·day", "freezing degree-days that no thaw undid; no thickness follows", x => x.Celsius);
    public static readonly FigureKey<DegreeDays> Lately = new("ice.frost-lately", "°C·day", "what the last three days brought of it", x => x.Celsius);
    public static readonly FigureKey<double> Days = new("ice.days", "", "days that weather was given for", x => x);

    public static IReadOnlyList<FigureKey> All { get; } = [Report, Effective, Least, Most, Required, Load, Told, Frost, Lately, Days];
}
