namespace CrewBot.Storage.Crews;

/// <summary>Units that a crew or a person speaks in.</summary>
public enum UnitSystem
{
    /// <summary>Feet, pounds, degrees Fahrenheit.</summary>
    Customary,

    /// <summary>Metres, kilograms, degrees Celsius.</summary>
    Metric,
}
