namespace CrewBot.Core.Ice;

/// <summary>How a measured thickness stands beside a required one. No value of this means that ice is safe.</summary>
public enum CarryVerdict
{
    /// <summary>Nothing measured that counts, or nothing published that applies.</summary>
    NoAnswer,

    /// <summary>Bad news, or under the hard stop.</summary>
    StayOff,

    /// <summary>Measured is less than required.</summary>
    LessThanRequired,

    /// <summary>Measured is at least what a published rule asks of uniform, clear, sound ice. Conditions differ within metres.</summary>
    MeetsTheFigure,
}
