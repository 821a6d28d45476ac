using CrewBot.Core.Knowledge;

namespace CrewBot.Core.Rigs;

/// <summary>A bait, or deliberately none.</summary>
internal sealed record ChosenBait(Bait? Bait, FormattableString Why);
