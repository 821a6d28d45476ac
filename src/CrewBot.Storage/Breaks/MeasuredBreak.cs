namespace CrewBot.Storage.Breaks;

/// <summary>A break at a knot whose pull was measured.</summary>
/// <param name="Knot">Key of the knot.</param>
/// <param name="Line">Key of the material that parted.</param>
/// <param name="Share">The pull at which it parted as a share of what its label says, above 0.</param>
public sealed record MeasuredBreak(string Knot, string Line, double Share);
