namespace CrewBot.Core.Rigs;

/// <summary>A knot that parted while somebody read the scale.</summary>
/// <param name="Knot">Key of the knot.</param>
/// <param name="Line">Key of the material that parted.</param>
/// <param name="Share">The pull at which it parted as a share of what the line's label says, above 0.</param>
public sealed record PartedKnot(string Knot, string Line, double Share);
