namespace CrewBot.Core.Pictures;

/// <summary>What a ruler counts.</summary>
public enum RulerUnit
{
    Centimetres,
    Inches,
}
