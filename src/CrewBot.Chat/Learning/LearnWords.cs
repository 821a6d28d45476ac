using System.Globalization;
using CrewBot.Chat.Catches;
using CrewBot.Chat.Commands;
using CrewBot.Core.Effort;
using CrewBot.Core.Knowledge;

namespace CrewBot.Chat.Learning;

/// <summary>Says catch rates in words.</summary>
internal static class LearnWords
{
    private const double Confidence = 0.95;

    /// <summary>A cell with its numbers: "jigging spoon: 1.4 a line-hour (likely 1.1 to 1.8), 43 fish in 31 line-hours".</summary>
    public static string Row(RankedCell place, string name) => $"{name}: {Numbers(place.Cell.Tally)}";

    /// <summary>The numbers of a tally: "1.4 a line-hour (likely 1.1 to 1.8), 43 fish in 31 line-hours".</summary>
    public static string Numbers(Tally tally)
    {
        var limits = ExactPoisson.Limits(tally, Confidence)!.Value;
        return $"{tally.Rate} a line-hour (likely {limits.Low} to {limits.High}), {tally.Fish} fish in {tally.HoursInWords} line-hours";
    }

    /// <summary>What a cell was, as an angler would say it: "jigging spoon, negative, 20 to 30 ft (6.1 to 9.1 m), midday".</summary>
    public static string NameOf(EffortKey key, TradeKnowledge knowledge, Request request)
    {
        string?[] parts =
        [
            key.Species is { } species ? CatchWords.NameOf(species, knowledge) : null,
            key.Presentation is { } presentation ? CatchWords.PresentationOf(presentation, knowledge) : null,
            key.Mood is { } mood ? $"{mood.ToString().ToLowerInvariant()} mood" : null,
            key.Depth is { } zone ? Zone(zone, request) : null,
            key.Time?.ToString().ToLowerInvariant(),
        ];
        return string.Join(", ", parts.OfType<string>()) is { Length: > 0 } name ? name : "all fishing";
    }

    /// <summary>A chance as one in so many: "1 chance in 3".</summary>
    public static string Chance(double chance) => chance >= 0.45
        ? "an even chance"
        : $"1 chance in {(1 / chance).ToString("0", CultureInfo.InvariantCulture)}";

    private static string Zone(DepthZone zone, Request request) => zone.To is not { } to
        ? $"deeper than {request.Show.Depth(zone.From)}"
        : zone.From.Meters == 0 ? $"shallower than {request.Show.Depth(to)}"
        : $"{request.Show.Depth(zone.From)} to {request.Show.Depth(to)}";
}
