namespace CrewBot.Core.Derbies;

/// <summary>Which line of the bump board counts for a fish between two of them.</summary>
public enum Rounding
{
    /// <summary>The line below: common practice.</summary>
    Down,

    /// <summary>The nearer line; the upper one from half-way.</summary>
    Nearest,

    /// <summary>The line above.</summary>
    Up,
}
