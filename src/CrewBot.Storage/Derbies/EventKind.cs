namespace CrewBot.Storage.Derbies;

/// <summary>What an event is called in the table.</summary>
internal enum EventKind
{
    Created,
    Joined,
    Left,
    Entered,
    Witnessed,
    Amended,
    Accepted,
    Refused,
    Penalised,
    Withdrawn,
    Disputed,
    Ruled,
    Closed,
    Reopened,
}
