namespace CrewBot.Storage.Catches;

/// <summary>An entry of the log.</summary>
/// <param name="Number">Its number within the crew.</param>
/// <param name="Angler">Whose it is.</param>
/// <param name="Water">The water's name; null when nobody said.</param>
/// <param name="IsVoid">It no longer counts.</param>
/// <param name="Entry">The fish.</param>
public sealed record LoggedCatch(long Number, string Angler, string? Water, bool IsVoid, CatchEntry Entry)
{
    /// <summary>The angler by the platform's id; null for one who was erased.</summary>
    public string? AnglerId { get; init; }

    /// <summary>The spot's name; null when nobody said. Never shown outside the crew.</summary>
    public string? Spot { get; init; }

    /// <summary>Since when it no longer counts; null while it does.</summary>
    public DateTimeOffset? VoidedAt { get; init; }
}
