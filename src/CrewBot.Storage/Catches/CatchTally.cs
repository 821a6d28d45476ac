namespace CrewBot.Storage.Catches;

/// <summary>What an angler caught of one species.</summary>
/// <param name="MemberId">Number of the angler.</param>
/// <param name="Angler">The angler's name.</param>
/// <param name="Species">Key of the species.</param>
/// <param name="Fish">How many.</param>
/// <param name="TotalNm">The lengths of the measured ones together, in nanometres.</param>
/// <param name="LongestNm">The longest, in nanometres; null when none was measured.</param>
/// <param name="Longest">Its number in the log; the earliest of several as long.</param>
public sealed record CatchTally(long MemberId, string Angler, string Species, long Fish, long TotalNm, long? LongestNm, long? Longest);
