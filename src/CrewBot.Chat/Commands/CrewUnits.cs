namespace CrewBot.Chat.Commands;

/// <summary>Which units a crew speaks in: a bare number is read in them, and replies give them first.</summary>
public enum CrewUnits
{
    /// <summary>Feet, ounces, pounds, degrees Fahrenheit.</summary>
    Customary,

    /// <summary>Metres, grams, kilograms, degrees Celsius.</summary>
    Metric,
}
