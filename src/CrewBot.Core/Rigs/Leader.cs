using UnitsNet;

namespace CrewBot.Core.Rigs;

/// <summary>The last stretch before the lure.</summary>
/// <param name="Line">Material and test.</param>
/// <param name="Length">How long it is tied.</param>
public sealed record Leader(LineChoice Line, Length Length);
