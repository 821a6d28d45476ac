using CrewBot.Core.Knowledge;
using UnitsNet;

namespace CrewBot.Core.Effort;

/// <summary>What the trade expects before a crew has fished. Every number here is judgement, to be outweighed by a few days out.</summary>
public static class CatchPriors
{
    private const double FirstChoice = 1.25;
    private const double SecondChoice = 1.1;
    private const double LaterChoice = 0.9;
    private const double NoChoice = 0.6;

    private static readonly Duration UsualWeight = Duration.FromHours(20);
    private static readonly Duration CellWeight = Duration.FromHours(10);

    /// <summary>What a line takes an hour of a species, by the crew's whole fishing weighed against what is usual.</summary>
    public static CatchRate Base(Species species, Tally all) =>
        CatchPosterior.Of(new CatchPrior(new CatchRate(Usual(species.Class)), UsualWeight), all).Mean;

    /// <summary>What is expected of a cell: the base, better for what the trade shows first to that species.</summary>
    /// <param name="species">The fish.</param>
    /// <param name="key">The cell; without a presentation or a mood the trade has no opinion on that.</param>
    /// <param name="whole">The base for the species.</param>
    public static CatchPrior For(Species species, EffortKey key, CatchRate whole) => new(
        new CatchRate(whole.PerLineHour * (key.Presentation is { } presentation ? Standing(species, presentation, key.Mood) : 1)), CellWeight);

    private static double Standing(Species species, string presentation, Mood? mood)
    {
        var order = species.Presentations[mood ?? Mood.Neutral];
        return Enumerable.Range(0, order.Count).FirstOrDefault(at => order[at] == presentation, -1) switch
        {
            0 => FirstChoice,
            1 => SecondChoice,
            > 1 => LaterChoice,
            _ => NoChoice,
        };
    }

    private static double Usual(SizeClass size) => size switch
    {
        SizeClass.Panfish => 1.0,
        SizeClass.Mid => 0.25,
        SizeClass.Big => 0.1,
        _ => 0.08,
    };
}
