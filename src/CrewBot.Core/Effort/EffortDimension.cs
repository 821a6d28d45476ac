namespace CrewBot.Core.Effort;

/// <summary>What catch rates can be told apart by.</summary>
public enum EffortDimension
{
    Presentation,
    Mood,
    Species,
    Depth,
    Time,
}
