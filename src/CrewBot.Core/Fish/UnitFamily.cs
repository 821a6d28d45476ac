namespace CrewBot.Core.Fish;

/// <summary>
/// Which units an angler measured in. Length categories have a table for each, and they are no conversions of one
/// another.
/// </summary>
public enum UnitFamily
{
    Metric,
    Inch,
}
