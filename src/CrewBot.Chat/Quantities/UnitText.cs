using CrewBot.Chat.Commands;

namespace CrewBot.Chat.Quantities;

/// <summary>Finds the unit that a quantity was written in.</summary>
internal static class UnitText
{
    /// <summary>What stands after the number, or the caller's unit where nothing does.</summary>
    public static string Of(string text, CrewUnits units, (string Customary, string Metric)? bare) =>
        NumberText.Split(text)?.After is { Length: > 0 } written ? written
        : units == CrewUnits.Customary ? bare!.Value.Customary
        : bare!.Value.Metric;
}
