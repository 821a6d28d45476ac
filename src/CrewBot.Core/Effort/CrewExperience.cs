using System.Globalization;
using CrewBot.Core.Knowledge;

namespace CrewBot.Core.Effort;

/// <summary>What a crew's own fishing says of the ways to fish for one species in one mood.</summary>
/// <param name="Month">The month of any year that it is from, 1 to 12; null for the whole log.</param>
/// <param name="Ways">By the presentation's key; those too that nobody fished, for which only the trade speaks.</param>
public sealed record CrewExperience(int? Month, IReadOnlyDictionary<string, WayEvidence> Ways)
{
    // As many as the trade's own view weighs twice (judgement): a month with fewer would mostly be luck.
    private const double EnoughLineHours = 20;

    /// <summary>Counts it: from the month alone when it was fished enough, otherwise from the whole log.</summary>
    /// <param name="spells">The crew's, in any order. Of which nobody said the mood, they count as neutral, as a plan does.</param>
    /// <param name="fish">The crew's, in any order.</param>
    /// <param name="species">The fish.</param>
    /// <param name="mood">How willing they are.</param>
    /// <param name="month">1 to 12.</param>
    /// <param name="knowledge">What the trade knows.</param>
    /// <returns>Null when nothing was fished that could tell.</returns>
    public static CrewExperience? Of(
        IReadOnlyList<FishedSpell> spells, IReadOnlyList<CaughtFish> fish, Species species, Mood mood, int month, TradeKnowledge knowledge)
    {
        List<FishedSpell> told = [.. spells.Select(spell => spell.Mood is null ? spell with { Mood = Mood.Neutral } : spell)];
        List<FishedSpell> ofMonth = [.. told.Where(spell => spell.Down.Month == month)];
        return Of(ofMonth, EnoughLineHours, month) ?? Of(told, double.Epsilon, null);

        CrewExperience? Of(List<FishedSpell> counted, double leastLineHours, int? of)
        {
            var ways = WayRanking.Of(new EffortLog(counted, fish), species, [EffortDimension.Presentation], mood, knowledge);
            return ways.Fished.Sum(place => place.Cell.Tally.LineTime.Hours) < leastLineHours
                ? null
                : new CrewExperience(of, ways.Ranking.Cells.ToDictionary(
                    place => ways.Keys[place.Cell.Key].Presentation!, place => new WayEvidence(place.Cell.Tally, place.Posterior)));
        }
    }

    /// <summary>
    /// Puts ways that the trade shows in this order into the crew's own. At each place stands what the trade shows first of
    /// those left, unless others likely give more: then, of these, the one with the best low end.
    /// </summary>
    /// <param name="ways">Keys of presentations, each once.</param>
    /// <returns>The same keys.</returns>
    public IReadOnlyList<string> Order(IEnumerable<string> ways)
    {
        var left = ways.ToList();
        var ordered = new List<string>(left.Count);
        while (left.Count > 0)
        {
            var next = left.Where(way => LikelyOver(way, left[0]) is not null).MaxBy(way => Ways[way].LowEnd.PerLineHour) ?? left[0];
            ordered.Add(next);
            left.Remove(next);
        }

        return ordered;
    }

    /// <summary>The chance that one way gives more than another, where that is likely, from 85 %; otherwise null.</summary>
    public double? LikelyOver(string way, string other) =>
        Ways.TryGetValue(way, out var own) && Ways.TryGetValue(other, out var rival)
        && own.ChanceOver(rival) is { } chance && Certainties.IsLikely(chance)
            ? chance
            : null;

    /// <summary>The crew's numbers on a way: "1.4 a line-hour on this in January, from 31 hours"; null when nobody fished it.</summary>
    public string? Told(string way) => Ways.TryGetValue(way, out var own) && own.Tally.Rate is { } rate
        ? $"{rate} a line-hour on this{(Month is { } month ? $" in {CultureInfo.InvariantCulture.DateTimeFormat.GetMonthName(month)}" : "")}, from {own.Tally.HoursInWords} hours"
        : null;
}
