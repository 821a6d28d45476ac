namespace CrewBot.Storage.Catches;

/// <summary>The longest fish of a species.</summary>
/// <param name="Number">Its number within the crew.</param>
/// <param name="LengthNm">Its length in nanometres.</param>
/// <param name="CaughtAt">When it was caught.</param>
/// <param name="Angler">Whose it is.</param>
public sealed record LongestCatch(long Number, long LengthNm, DateTimeOffset CaughtAt, string Angler);
