namespace CrewBot.Core.Knowledge;

/// <summary>Whose numbering a split shot follows.</summary>
public enum ShotScale
{
    British,
    NorthAmerican,
}
