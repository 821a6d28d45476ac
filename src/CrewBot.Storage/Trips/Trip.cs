using CrewBot.Core.Fish;

namespace CrewBot.Storage.Trips;

/// <summary>A day out that somebody planned.</summary>
/// <param name="PlannedBy">Who planned it.</param>
/// <param name="WaterId">Where to.</param>
/// <param name="MeetAt">When they meet.</param>
/// <param name="ReturnAt">When everybody means to be off the ice; later than they meet.</param>
public sealed record Trip(long PlannedBy, long WaterId, DateTimeOffset MeetAt, DateTimeOffset ReturnAt)
{
    /// <summary>Its number within the crew; 0 before it is stored.</summary>
    public long Number { get; init; }

    public bool IsCancelled { get; init; }

    /// <summary>Where they meet.</summary>
    public string? Place { get; init; }

    /// <summary>The key of the species they are after.</summary>
    public string? Species { get; init; }

    public string? Note { get; init; }

    /// <summary>How deep they mean to fish; null when nobody said.</summary>
    public ExactLength? Depth { get; init; }

    /// <summary>Where it was planned, a place that posts can go to; null where there is none.</summary>
    public string? Room { get; init; }

    public TripRoster Roster { get; init; } = new();

    /// <summary>When the first went onto the ice, or they met, whichever came first.</summary>
    public DateTimeOffset BeganAt => Roster.Parties.Select(party => party.OutAt).OfType<DateTimeOffset>().Append(MeetAt).Min();

    /// <summary>When the last was back, or everybody meant to be, whichever comes last; null while a party is on the ice.</summary>
    public DateTimeOffset? EndedAt => Roster.Parties.Any(party => party.IsOnTheIce)
        ? null
        : Roster.Parties.Select(party => party.BackAt).OfType<DateTimeOffset>().Append(ReturnAt).Max();
}
