namespace CrewBot.Core.Rigs;

/// <summary>How an outfit was come to, in places on the ladder of outfits.</summary>
/// <param name="Usual">The one that the presentation takes for this class of fish.</param>
/// <param name="Start">The one after the size of the fish had its say.</param>
/// <param name="Taken">The one that was taken.</param>
/// <param name="TooWeak">A lighter one would not have held the fish; otherwise wire asked for the heavier one.</param>
internal readonly record struct OutfitStep(int Usual, int Start, int Taken, bool TooWeak);
