namespace CrewBot.Core.Ice.Posts;

/// <summary>A thickness as found, in metres.</summary>
/// <param name="Least">The lower bound.</param>
/// <param name="Most">The upper bound.</param>
/// <param name="Kind">What the ice is called.</param>
/// <param name="Place">Where.</param>
/// <param name="IsHedged">Whether it is a guess.</param>
/// <param name="IsHearsay">Whether it is somebody else's word.</param>
/// <param name="IsTotal">Whether it is said to be all there is.</param>
internal sealed record PostFound(double Least, double Most, IceKind Kind, string? Place, bool IsHedged, bool IsHearsay, bool IsTotal);
