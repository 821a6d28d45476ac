using CrewBot.Core.Knowledge;

namespace CrewBot.Core.Rigs;

/// <summary>The lines and metal of a rig, before the lure is chosen.</summary>
/// <param name="Outfit">The rod and its ladder rung.</param>
/// <param name="Tied">What is tied.</param>
/// <param name="Why">Why.</param>
internal sealed record RigParts(Outfit Outfit, TiedRig Tied, LineReasons Why);
