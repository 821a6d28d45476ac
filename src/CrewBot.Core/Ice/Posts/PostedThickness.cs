using UnitsNet;

namespace CrewBot.Core.Ice.Posts;

/// <summary>A thickness in a post.</summary>
/// <param name="Least">The lower bound: of a range its lower end, of several holes the thinnest.</param>
/// <param name="Most">The upper bound; the same where the writer gives one number.</param>
/// <param name="Kind">What ice the writer calls it; unknown when nothing is said, or several kinds at once.</param>
/// <param name="Place">Where, as written; null when the post does not say.</param>
/// <param name="IsHedged">Whether it is only about, maybe, or by eye.</param>
/// <param name="IsHearsay">Whether the writer passes on somebody else's word.</param>
public sealed record PostedThickness(Length Least, Length Most, IceKind Kind, string? Place, bool IsHedged, bool IsHearsay);
