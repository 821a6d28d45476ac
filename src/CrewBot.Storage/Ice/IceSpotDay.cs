using UnitsNet;

namespace CrewBot.Storage.Ice;

/// <summary>What the measurements of a stretch of time come to at one spot.</summary>
/// <param name="SpotPlain">The spot's name, as names are compared.</param>
/// <param name="Least">The least ice in any hole, whatever its kind.</param>
/// <param name="Most">The most.</param>
/// <param name="Counts">The least that any hole counts as.</param>
public sealed record IceSpotDay(string SpotPlain, Length Least, Length Most, Length Counts);
