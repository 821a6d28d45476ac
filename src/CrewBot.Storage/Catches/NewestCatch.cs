namespace CrewBot.Storage.Catches;

/// <summary>What tells a fish from the one that an angler logged just before.</summary>
/// <param name="Number">Its number within the crew.</param>
/// <param name="Species">Key of the species.</param>
/// <param name="LengthNm">Its length in nanometres; null when it was not measured.</param>
/// <param name="WeightNg">Its weight in nanograms; null when it was not weighed.</param>
/// <param name="LoggedAt">When it was logged.</param>
public sealed record NewestCatch(long Number, string Species, long? LengthNm, long? WeightNg, DateTimeOffset LoggedAt);
