using CrewBot.Core.Fish;

namespace CrewBot.Storage.Catches;

/// <summary>The longest fish of a species.</summary>
/// <param name="Number">Its number within the crew.</param>
/// <param name="Angler">Whose it is.</param>
/// <param name="Length">How long.</param>
public sealed record LongestCatch(long Number, string Angler, ExactLength Length);
