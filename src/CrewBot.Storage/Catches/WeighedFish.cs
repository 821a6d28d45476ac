using CrewBot.Core.Fish;

namespace CrewBot.Storage.Catches;

/// <summary>A fish that was measured and weighed.</summary>
/// <param name="Number">Its number in the log.</param>
/// <param name="Angler">Whose it is.</param>
/// <param name="Species">Key of the species.</param>
/// <param name="Length">Its length, in millimetres.</param>
/// <param name="Weight">What the scale said, in grams.</param>
public sealed record WeighedFish(long Number, string Angler, string Species, ExactLength Length, ExactMass Weight);
