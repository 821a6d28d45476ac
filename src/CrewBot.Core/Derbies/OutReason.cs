namespace CrewBot.Core.Derbies;

/// <summary>Why an entry does not count, in the order in which it is asked.</summary>
public enum OutReason
{
    /// <summary>Its angler or a steward took it back.</summary>
    Withdrawn,

    /// <summary>The catch is void in the crew's log.</summary>
    Void,

    /// <summary>Its angler has left the derby.</summary>
    AnglerLeft,

    /// <summary>Caught before the start or after the end.</summary>
    OutsideWindow,

    /// <summary>Word of it came after the grace time, and no steward has taken it.</summary>
    Late,

    /// <summary>Under protest until a steward has ruled.</summary>
    Disputed,

    /// <summary>A steward has refused it.</summary>
    Refused,

    /// <summary>Waits for its evidence.</summary>
    Waiting,

    /// <summary>The species does not count in this derby.</summary>
    OtherSpecies,

    /// <summary>The water does not count in this derby.</summary>
    OtherWater,

    /// <summary>Kept where it had to be released, or the other way round.</summary>
    OtherFate,

    /// <summary>Scored shorter than the least length.</summary>
    TooShort,

    /// <summary>The scoring rule knows no value for it: no factor, no trophy length, no weight.</summary>
    NoScore,
}
