using System.Globalization;
using CrewBot.Core.Knowledge;

namespace CrewBot.Core.Effort;

/// <summary>What a crew's own fishing says of the ways to fish for one species in one mood.</summary>
/// <param name="month">The month of any year that it is from, 1 to 12; null for the whole log.</param>
/// <param name="ways">By the presentation's key; those too that nobody fished, for which only the trade speaks.</param>
public sealed class CrewExperience(int? month, IReadOnlyDictionary<string, WayEvidence> ways)
{
    // As many as the trade's own view weighs twice (judgement): a month with fewer would mostly be luck.
    private const double EnoughLineHours = 20;

    // Each pair takes an integral over two posteriors; asked for with every plan, they are worked out once.
    private readonly HashSet<(string Way, string Other)> _outfishes =
    [
        .. from way in ways
           from other in ways
           where way.Value.ChanceOver(other.Value) is { } chance && Certainties.IsNearlyCertain(chance)
           select (way.Key, other.Key),
    ];

    /// <summary>The month of any year that it is from, 1 to 12; null for the whole log.</summary>
    public int? Month => month;

    /// <summary>What is known of each way, by the presentation's key.</summary>
    public IReadOnlyDictionary<string, WayEvidence> Ways => ways;

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
    /// those left, unless others nearly certainly give more: then, of these, the one with the best low end.
    /// </summary>
    /// <param name="ways">Keys of presentations, each once.</param>
    /// <returns>The same keys.</returns>
    public IReadOnlyList<string> Order(IEnumerable<string> ways)
    {
        var left = ways.ToList();
        var ordered = new List<string>(left.Count);
        while (left.Count > 0)
        {
            var next = left.Where(way => Outfishes(way, left[0])).MaxBy(way => Ways[way].LowEnd.PerLineHour) ?? left[0];
            ordered.Add(next);
            left.Remove(next);
        }

        return ordered;
    }

    /// <summary>
    /// Whether one way nearly certainly gives more than another, from 97 %. Less would be luck too often: a crew compares every
    /// way with every other, and goes on comparing.
    /// </summary>
    public bool Outfishes(string way, string other) => _outfishes.Contains((way, other));

    /// <summary>The crew's numbers on a way: "1.4 a line-hour on this in January, from 31 hours"; null when nobody fished it.</summary>
    public string? Told(string way) => Ways.TryGetValue(way, out var own) && own.Tally.Rate is { } rate
        ? $"{rate} a line-hour on this{(Month is { } month ? $" in {CultureInfo.InvariantCulture.DateTimeFormat.GetMonthName(month)}" : "")}, from {own.Tally.HoursInWords} hours"
        : null;
}
