namespace CrewBot.Chat.Quantities;

/// <summary>What a unit measures.</summary>
public enum Dimension
{
    Length,
    Weight,
    Temperature,
    Speed,
    Time,
    Density,
    Power,
}
