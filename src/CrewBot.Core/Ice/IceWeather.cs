namespace CrewBot.Core.Ice;

/// <summary>What kind of weather it has been for ice.</summary>
public enum IceWeather
{
    /// <summary>No frost is left that thaws did not undo.</summary>
    None,

    /// <summary>The last days took frost away.</summary>
    Thawing,

    /// <summary>Frost is still gained, but the last day reached the freezing point.</summary>
    ThawingByDay,

    /// <summary>It has been freezing.</summary>
    Freezing,
}
