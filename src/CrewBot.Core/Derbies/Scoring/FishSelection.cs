namespace CrewBot.Core.Derbies.Scoring;

/// <summary>Which of the fish that count make up the total: the best, with or without a limit to each species.</summary>
/// <param name="Most">How many in all, from 1; null for all.</param>
/// <param name="MostOfEach">How many of one species, from 1: 1 is the mixed bag, one of each; null for no limit.</param>
public sealed record FishSelection(int? Most = null, int? MostOfEach = null)
{
    /// <summary>Parts the fish.</summary>
    /// <param name="fish">Best first.</param>
    internal (IReadOnlyList<ScoredFish> Used, IReadOnlyList<ScoredFish> Spare) Part(IReadOnlyList<ScoredFish> fish)
    {
        var used = new List<ScoredFish>();
        var spare = new List<ScoredFish>();
        var ofEach = new Dictionary<string, int>();
        foreach (var one in fish)
        {
            var already = ofEach.GetValueOrDefault(one.Entry.Species);
            if (used.Count < (Most ?? int.MaxValue) && already < (MostOfEach ?? int.MaxValue))
            {
                ofEach[one.Entry.Species] = already + 1;
                used.Add(one);
            }
            else
            {
                spare.Add(one);
            }
        }

        return (used, spare);
    }
}
