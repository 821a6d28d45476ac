using CrewBot.Chat.Commands;
using CrewBot.Core.Effort;

namespace CrewBot.Chat.Learning;

/// <summary>The numbers of catch rates. A reply with several ways of fishing sets <c>way1.</c> and up before the key.</summary>
public static class LearnFigures
{
    public static readonly FigureKey<CatchRate> Rate = new("rate", "1/h", "fish per line-hour", x => x.PerLineHour);
    public static readonly FigureKey<CatchRate> RateLow = new("rate.low", "1/h", "low end of the exact 95 % Poisson interval", x => x.PerLineHour);
    public static readonly FigureKey<CatchRate> RateHigh = new("rate.high", "1/h", "high end of the exact 95 % Poisson interval", x => x.PerLineHour);
    public static readonly FigureKey<CatchRate> Believed = new("rate.believed", "1/h", "fish per line-hour weighed against what the trade expects", x => x.PerLineHour);
    public static readonly FigureKey<double> Fish = new("rate.fish", "", "fish that the rate counts", x => x);
    public static readonly FigureKey<double> Hours = new("rate.line-hours", "h", "line-hours that the rate counts", x => x);
    public static readonly FigureKey<double> Without = new("rate.fish-without-hours", "", "fish caught while no line-hours were counted: in no rate", x => x);
    public static readonly FigureKey<double> Bunching = new("rate.bunching", "", "how bunched the fish came: 1 is one by one", x => x);

    /// <summary>The crew's own numbers on a presentation; none when nobody fished it.</summary>
    internal static IEnumerable<Figure> Of(CrewExperience? experience, string presentation) =>
        experience?.Ways.GetValueOrDefault(presentation) is { Tally: { Rate: { } rate } tally } known
            ? [Rate.Of(rate), Believed.Of(known.Posterior.Mean), Fish.Of(tally.Fish), Hours.Of(tally.LineTime.Hours)]
            : [];

    /// <summary>Every key, in the order of the docs.</summary>
    public static IReadOnlyList<FigureKey> All { get; } = [Rate, RateLow, RateHigh, Believed, Fish, Hours, Without, Bunching];
}
