namespace CrewBot.Core.Effort;

/// <summary>Part of a day by the angler's clock. The bounds are judgement: in mid-winter the afternoon holds the dusk.</summary>
public enum DayPart
{
    /// <summary>From 22:00 to 6:00.</summary>
    Night,

    /// <summary>From 6:00 to 10:00.</summary>
    Morning,

    /// <summary>From 10:00 to 14:00.</summary>
    Midday,

    /// <summary>From 14:00 to 18:00.</summary>
    Afternoon,

    /// <summary>From 18:00 to 22:00.</summary>
    Evening,
}
