namespace CrewBot.Core.Ice.Posts;

/// <summary>A hazard in a post.</summary>
/// <param name="Hazard">What it is.</param>
/// <param name="Place">Where, as written; null when the post does not say.</param>
/// <param name="IsHearsay">Whether the writer passes on somebody else's word.</param>
public sealed record PostedHazard(IceHazard Hazard, string? Place, bool IsHearsay);
