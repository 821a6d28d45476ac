using System.Globalization;
using CrewBot.Chat.Catches;
using CrewBot.Chat.Commands;
using CrewBot.Chat.Quantities;
using CrewBot.Core.Effort;
using CrewBot.Core.Knowledge;
using CrewBot.Core.Pictures;

namespace CrewBot.Chat.Learning;

/// <summary>What a crew's fishing says of one species.</summary>
/// <param name="request">The question.</param>
/// <param name="knowledge">What the trade knows.</param>
/// <param name="record">The fishing.</param>
/// <param name="species">The fish.</param>
/// <param name="by">What is compared.</param>
/// <param name="mood">The mood that counts; null for all.</param>
/// <param name="span">The time and water in words.</param>
/// <param name="isAssumed">Nobody named the species.</param>
internal sealed class LearnAnswer(
    Request request, TradeKnowledge knowledge, FishingRecord record, Species species, IReadOnlyList<EffortDimension> by, Mood? mood, string span,
    bool isAssumed)
{
    private const int MostShown = 4;
    private const int MostPictured = 6;
    private const double Confidence = 0.95;
    private const double NoticeablyBunched = 1.2;

    private readonly WayRanking _ways = WayRanking.Of(record.Log, species, by, mood, knowledge);

    public Reply Give()
    {
        var shown = _ways.Fished;
        return shown.Count == 0
            ? Reply.Refuse($"No line-hours with {string.Join(" and ", by.Select(Word))} recorded for {span}: give it with /lines down.")
            : new Reply
            {
                Headline = Headline(shown),
                Lines =
                [
                    .. shown.Take(MostShown).Select((place, index) => $"{index + 1}. {LearnWords.Row(place, NameOf(_ways, place))}"),
                    .. _ways.Ranking.TryNext is { } next ? (string[])[TryNext(next)] : [],
                    .. LeftOut(),
                    .. Understanding.Of(request, isAssumed ? [$"{species.Name}, what you catch most"] : []),
                ],
                Figures = [.. Figures(shown)],
                Reasons = new WhenRead<string>(() => Reasons(shown)),
                Pictures = [Picture.Of("learned", request, () => Pictured(shown))],
                Actions = [ReplyAction.Picture(request), .. ReplyAction.WhyAndShare(request)],
            };
    }

    private string Headline(IReadOnlyList<RankedCell> shown)
    {
        var subject = $"{CatchWords.Sentence(by.Contains(EffortDimension.Species) ? "what bites" : species.Name)}, {span}{(mood is { } only ? $", {only.ToString().ToLowerInvariant()} mood" : "")}";
        var first = NameOf(_ways, shown[0]);
        return (shown.Count == 1 ? null : _ways.Ranking.Lead) switch
        {
            null => $"{subject}: {first} is all that was fished",
            Certainty.TooEarly => $"{subject}: {first} leads, too early to say",
            Certainty.TooClose => $"{subject}: {first} leads, too close to call",
            { } lead => $"{subject}: {first} is best ({lead.Words()})",
        };
    }

    private IntervalPicture Pictured(IReadOnlyList<RankedCell> shown)
    {
        var title = Headline(shown);
        var rows = shown.Take(MostPictured).Select(place =>
        {
            var (tally, limits) = (place.Cell.Tally, ExactPoisson.Limits(place.Cell.Tally, Confidence)!.Value);
            return new PicturedInterval(
                CatchWords.Sentence(NameOf(_ways, place)),
                $"{tally.Rate!.Value} a line-hour, {tally.Fish} fish in {tally.HoursInWords} line-hours",
                limits.Low.PerLineHour, tally.Rate.Value.PerLineHour, limits.High.PerLineHour);
        }).ToList();
        return new($"{title}. {string.Join("; ", shown.Take(MostPictured).Select(place => LearnWords.Row(place, NameOf(_ways, place))))}.", title, "fish a line-hour, each with its 95 % interval", rows);
    }

    private string TryNext(RankedCell next)
    {
        var hours = next.Cell.Tally.LineTime.Hours > 0 ? $"{next.Cell.Tally.HoursInWords} line-hours so far" : "not fished yet";
        return $"Try next: {NameOf(_ways, next)} ({hours}): {LearnWords.Chance(next.ChanceOverFirst)} that it beats {NameOf(_ways, _ways.Ranking.Cells[0])}.";
    }

    private IEnumerable<string> LeftOut()
    {
        var unrecorded = _ways.Unrecorded;
        if (unrecorded.LineTime.Hours > 0)
        {
            yield return $"Left out: {unrecorded.HoursInWords} line-hours and {unrecorded.Fish} fish without {string.Join(" or ", by.Where(CanBeMissing).Select(Word))}: give it with /lines down.";
        }

        var without = record.Log.WithoutHours.Count(fish => by.Contains(EffortDimension.Species) || fish.Species == species.Key);
        if (without > 0)
        {
            yield return $"In no rate: {without} fish caught while no lines of theirs were down.";
        }

        if (record.Forgotten > 0)
        {
            yield return $"In no rate: {Counted.Of(record.Forgotten, "spell")} that nobody ended: /lines up with when: ends one.";
        }
    }

    private IEnumerable<Figure> Figures(IReadOnlyList<RankedCell> shown)
    {
        for (var at = 0; at < Math.Min(MostShown, shown.Count); at++)
        {
            var (prefix, tally) = ($"way{at + 1}.", shown[at].Cell.Tally);
            var limits = ExactPoisson.Limits(tally, Confidence)!.Value;
            yield return LearnFigures.Rate.Of(tally.Rate!.Value, prefix);
            yield return LearnFigures.RateLow.Of(limits.Low, prefix);
            yield return LearnFigures.RateHigh.Of(limits.High, prefix);
            yield return LearnFigures.Believed.Of(shown[at].Posterior.Mean, prefix);
            yield return LearnFigures.Fish.Of(tally.Fish, prefix);
            yield return LearnFigures.Hours.Of(tally.LineTime.Hours, prefix);
        }

        yield return LearnFigures.Without.Of(record.Log.WithoutHours.Count);
        yield return LearnFigures.Bunching.Of(_ways.Bunching);
    }

    private IEnumerable<string> Reasons(IReadOnlyList<RankedCell> shown)
    {
        foreach (var place in shown.Skip(MostShown))
        {
            yield return LearnWords.Row(place, NameOf(_ways, place));
        }

        foreach (var dimension in Enum.GetValues<EffortDimension>().Except(by).Where(other => other != EffortDimension.Species))
        {
            var ways = WayRanking.Of(record.Log, species, [dimension], mood, knowledge);
            if (ways.Fished is [var first, _, ..])
            {
                yield return $"By {Word(dimension)}: {LearnWords.Row(first, NameOf(ways, first))}; {ways.Ranking.Lead!.Value.Words()} that it is the best.";
            }
        }

        yield return "Best is what is good even if it has been lucky: the low end of a Gamma–Poisson interval, whose prior is what the trade expects, worth 10 line-hours.";
        yield return "In brackets: the exact 95 % Poisson interval (Garwood 1936). It takes fish to come one by one: a rough guide where they school or a bag limit stopped you.";
        if (_ways.Bunching > NoticeablyBunched)
        {
            yield return $"Fish came in bunches: each counts for 1/{_ways.Bunching.ToString("0.0", CultureInfo.InvariantCulture)} of one when sureness is weighed.";
        }
    }

    // A mood that everything shares is not repeated.
    private string NameOf(WayRanking ways, RankedCell place)
    {
        var key = ways.Keys[place.Cell.Key];
        return LearnWords.NameOf(mood is null ? key : key with { Mood = null }, knowledge, request);
    }

    private static bool CanBeMissing(EffortDimension dimension) =>
        dimension is EffortDimension.Presentation or EffortDimension.Mood or EffortDimension.Depth;

    private static string Word(EffortDimension dimension) => dimension.ToString().ToLowerInvariant();
}
