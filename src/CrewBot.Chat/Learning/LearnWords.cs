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

    /// <summary>A rate with two figures, as much as it bears: "1.4", "0.62", "0.031".</summary>
    public static string Number(double rate) => rate.ToString(
        rate switch { >= 10 => "0", >= 0.995 => "0.0", >= 0.0995 or 0 => "0.00", _ => "0.000" }, CultureInfo.InvariantCulture);

    /// <summary>Hours: whole from ten.</summary>
    public static string Hours(Tally tally) =>
        tally.LineTime.Hours.ToString(tally.LineTime.Hours >= 10 ? "0" : "0.0", CultureInfo.InvariantCulture);

    /// <summary>A cell with its numbers: "jigging spoon: 1.4 a line-hour (likely 1.1 to 1.8), 43 fish in 31 line-hours".</summary>
    public static string Row(RankedCell place, string name) => $"{name}: {Numbers(place.Cell.Tally)}";

    /// <summary>The numbers of a tally: "1.4 a line-hour (likely 1.1 to 1.8), 43 fish in 31 line-hours".</summary>
    public static string Numbers(Tally tally)
    {
        var limits = ExactPoisson.Limits(tally, Confidence)!.Value;
        return $"{Number(tally.Rate!.Value.PerLineHour)} a line-hour (likely {Number(limits.Low.PerLineHour)} to {Number(limits.High.PerLineHour)}), {tally.Fish} fish in {Hours(tally)} line-hours";
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
