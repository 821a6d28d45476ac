namespace CrewBot.Core.Knowledge;

/// <summary>How much a species minds seeing line.</summary>
public enum Shyness
{
    Low,
    Moderate,
    High,
}
