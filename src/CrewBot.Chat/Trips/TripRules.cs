namespace CrewBot.Chat.Trips;

/// <summary>The times that trips go by. Common practice.</summary>
internal static class TripRules
{
    /// <summary>A trip is spoken of as the current one for so long after its return.</summary>
    public static readonly TimeSpan StillUnderWay = TimeSpan.FromHours(12);

    /// <summary>How long after its return a party counts as overdue.</summary>
    public static readonly TimeSpan Grace = TimeSpan.FromMinutes(30);

    /// <summary>How often an overdue party is announced again.</summary>
    public static readonly TimeSpan AlertAgain = TimeSpan.FromMinutes(30);

    /// <summary>Without a word on the return, a day on the ice ends so long after meeting.</summary>
    public static readonly TimeSpan UsualDay = TimeSpan.FromHours(9);

    /// <summary>Who goes onto the ice longer ahead than this is not on the trip yet, and says themselves when they are back.</summary>
    public static readonly TimeSpan EarliestOut = TimeSpan.FromHours(12);

    /// <summary>When the evening before is, by the crew's clock: the time of reminders and pocket cards.</summary>
    public static readonly TimeOnly Evening = new(18, 0);

    /// <summary>How long before they meet the crew is reminded once more.</summary>
    public static readonly TimeSpan SoonBefore = TimeSpan.FromHours(2);

    /// <summary>Nobody says at once that they are later than by this.</summary>
    public static readonly TimeSpan LongestDelay = TimeSpan.FromHours(24);

    /// <summary>What it takes from the last line up to being off the ice: shelter down, sled packed, the way back.</summary>
    public static readonly TimeSpan WayBack = TimeSpan.FromHours(1);

    /// <summary>The live card is edited no more often than this.</summary>
    public static readonly TimeSpan CardGap = TimeSpan.FromSeconds(3);

    /// <summary>No trip lasts longer.</summary>
    public static readonly TimeSpan LongestTrip = TimeSpan.FromDays(7);
}
