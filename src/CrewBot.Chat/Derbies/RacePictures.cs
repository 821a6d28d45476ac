using CrewBot.Chat.Pictures;
using CrewBot.Chat.Rigs;
using CrewBot.Core.Derbies;
using CrewBot.Core.Derbies.Scoring;
using CrewBot.Core.Knowledge;
using CrewBot.Core.Pictures;

namespace CrewBot.Chat.Derbies;

/// <summary>Puts a derby into a picture of who led when: the standings as they stood, by the record.</summary>
internal static class RacePictures
{
    private const int Most = 6;

    /// <param name="sheet">The derby, with its record.</param>
    /// <param name="knowledge">What the trade knows.</param>
    /// <param name="now">When it is told.</param>
    public static RacePicture Of(DerbySheet sheet, TradeKnowledge knowledge, DateTimeOffset now)
    {
        var words = new DerbyWords(sheet.Derby, knowledge);
        var best = sheet.Standings.Lines.Take(Most).ToList();
        var points = PointsOf(sheet, knowledge, [.. best.Select(line => line.Tally.Who)]);
        var racers = best.Select(line => new Racer(
            $"{DerbyWords.Place(line)} {sheet.NameOf(line.Tally.Who)}", words.Total(line.Tally.Total), points[line.Tally.Who])).ToList();
        var changes = racers.SelectMany(racer => racer.Points).Select(point => point.At).ToList();
        var window = sheet.Settings.Window;
        var from = changes.Append(window.Starts).Min();
        var to = changes.Append(now < window.Ends ? now : window.Ends).Max();
        var told = string.Join("; ", racers.Select(racer => $"{racer.Name} {racer.Total}{(racer.Points is [.., var last] ? $" since {words.Time(last.At, now)}" : "")}"));
        return new RacePicture(
            $"{sheet.Derby.Name} over time, as the standings stood. {(racers.Count == 0 ? "No fish counts yet" : told)}.",
            $"{sheet.Derby.Name}: who led when",
            $"{UnitOf(sheet.Settings.Scoring.Measure, words)}. {RigWords.Sentence(StandingsReply.State(sheet, words, now))}.{string.Concat(StandingsReply.Waiting(sheet).Select(waiting => $" {waiting}"))}",
            racers,
            TimeTicks.Axis(from, to > from ? to : from.AddHours(1), TimeZoneInfo.FindSystemTimeZoneById(sheet.Derby.Zone)));
    }

    private static Dictionary<Competitor, List<RacePoint>> PointsOf(DerbySheet sheet, TradeKnowledge knowledge, IReadOnlyList<Competitor> best)
    {
        var points = best.ToDictionary(who => who, _ => new List<RacePoint>());
        var board = new Scoreboard(sheet.Settings, knowledge.Species);
        var record = sheet.Record.Select(written => (written.At, Apply: (Action)(() => board.Apply(written))))
            .Concat(sheet.Voided.Select(gone => (At: gone.Value, Apply: (Action)(() => board.Void(gone.Key)))));
        foreach (var (at, apply) in record.OrderBy(step => step.At))
        {
            apply();
            foreach (var who in best)
            {
                var (total, soFar) = ((double)board.TotalOf(who), points[who]);
                if (total != (soFar.Count > 0 ? soFar[^1].Total : 0))
                {
                    soFar.Add(new RacePoint(at, total));
                }
            }
        }

        return points;
    }

    private static string UnitOf(FishMeasure measure, DerbyWords words) => measure switch
    {
        PointsMeasure => "points",
        CountMeasure => "fish that count",
        LengthMeasure => $"length of the fish that count ({words.Unit})",
        _ => "per cent",
    };
}
