namespace CrewBot.Storage.Outbox;

/// <summary>How a post is said.</summary>
public sealed record PostManner
{
    /// <summary>As nearly everything is said: without a notification.</summary>
    public static PostManner Quiet { get; } = new();

    /// <summary>Its readers' devices may ring: for hazards and overdue parties alone.</summary>
    public bool Notifies { get; init; }

    /// <summary>A line that it gains when it is shown long after it was due, such as <c>(late: was due 16:30)</c>; null for none.</summary>
    public string? LateLine { get; init; }

    /// <summary>For how long after it was due it is still worth saying: later it is dropped unsaid; null for always.</summary>
    public TimeSpan? GoodFor { get; init; }

    /// <summary>The least time between two edits: what is said in between is said with the next.</summary>
    public TimeSpan Gap { get; init; }

    /// <summary>
    /// Said anew, as a message of its own, every so often until it is taken back or said otherwise; null for once. What fell
    /// due again while nobody could be reached is said once.
    /// </summary>
    public TimeSpan? Again { get; init; }
}
