namespace CrewBot.Chat.Catches;

/// <summary>The span of time that a board covers.</summary>
public enum Period
{
    /// <summary>From 1 July to 30 June.</summary>
    Season,

    /// <summary>The calendar month.</summary>
    Month,

    /// <summary>The last 24 hours.</summary>
    Day,

    /// <summary>A trip, from meeting to the last party back, on its water.</summary>
    Trip,

    /// <summary>Everything there is.</summary>
    All,
}
