namespace CrewBot.Storage.Catches;

/// <summary>An entry of the log.</summary>
/// <param name="Number">Its number within the crew.</param>
/// <param name="Angler">Whose it is.</param>
/// <param name="Water">The water's name; null when nobody said.</param>
/// <param name="IsVoid">It no longer counts.</param>
/// <param name="Entry">The fish.</param>
public sealed record LoggedCatch(long Number, string Angler, string? Water, bool IsVoid, CatchEntry Entry);
