using System.Globalization;

namespace CrewBot.Worker.Demos;

/// <summary>
/// A winter of an invented crew on invented lakes, told as the commands that its anglers would have given. The same seed
/// always tells the same winter.
/// </summary>
/// <remarks>
/// Fish come one by one (a Poisson process) at a rate that depends on the presentation alone. One effect is planted:
/// walleyes take <see cref="PlantedWay"/> twice as often as the other ways, though it is the last of them that the trade
/// would show. What is not planted is just as much part of it: the part of the day and the depth make no difference.
/// </remarks>
internal sealed class DemoSeason
{
    /// <summary>The presentation that walleyes prefer in this winter.</summary>
    public const string PlantedWay = "swimming jig";

    /// <summary>The lakes.</summary>
    public static readonly IReadOnlyList<string> Waters = ["Loon Basin", "Tamarack Bay"];

    /// <summary>The crew.</summary>
    public static readonly IReadOnlyList<string> Anglers = ["Ann", "Bo", "Cass", "Dell", "Eli", "Fern"];

    private const int Seed = 20251220;
    private const double WalleyesPerLineHour = 0.22;
    private const double PlantedFactor = 2;
    private const double PerchPerLineHour = 0.35;
    private const double ChanceToGo = 0.7;
    private const int LinesEach = 2;
    private const int Weekends = 11;

    private static readonly DateOnly FirstSaturday = new(2025, 12, 20);
    private static readonly TimeSpan SpellLength = TimeSpan.FromHours(4);
    private static readonly TimeSpan[] Starts = [new(7, 30, 0), new(12, 30, 0)];
    private static readonly TimeSpan LeastGap = TimeSpan.FromMinutes(2); // two alike within a minute would be asked about
    private static readonly string[] Ways = ["jigging spoon", "small jig", PlantedWay];

#pragma warning disable CA5394 // An invented winter needs to be the same each time, not hard to guess.
    private readonly Random _random = new(Seed);

    /// <summary>The commands in the order of their time.</summary>
    /// <param name="zone">The zone of the crew's clock.</param>
    public IReadOnlyList<DemoAct> Tell(TimeZoneInfo zone)
    {
        List<DemoAct> acts = [];
        for (var week = 0; week < Weekends; week++)
        {
            acts.AddRange(Day(FirstSaturday.AddDays(7 * week), zone));
            acts.AddRange(Day(FirstSaturday.AddDays((7 * week) + 1), zone));
        }

        return [.. acts.OrderBy(act => act.At)];
    }

    private IEnumerable<DemoAct> Day(DateOnly day, TimeZoneInfo zone)
    {
        var water = Pick(Waters);
        foreach (var angler in Anglers.Where(_ => _random.NextDouble() < ChanceToGo))
        {
            foreach (var start in Starts)
            {
                var local = day.ToDateTime(TimeOnly.MinValue) + start + TimeSpan.FromMinutes(_random.Next(20));
                foreach (var act in Spell(angler, water, new DateTimeOffset(local, zone.GetUtcOffset(local))))
                {
                    yield return act;
                }
            }
        }
    }

    private IEnumerable<DemoAct> Spell(string angler, string water, DateTimeOffset from)
    {
        var (way, depth) = (Pick(Ways), _random.Next(16, 31));
        var place = $"water:\"{water}\" presentation:\"{way}\" depth:{depth}ft";
        yield return new(from, angler, $"/lines down lines:{LinesEach} {place}");
        var fish = Fish("walleye", WalleyesPerLineHour * (way == PlantedWay ? PlantedFactor : 1), from, 18, 3, 11)
            .Concat(Fish("perch", PerchPerLineHour, from, 9, 1.2, 6))
            .OrderBy(one => one.At);
        var last = from;
        foreach (var (at, species, inches) in fish)
        {
            last = at < last + LeastGap ? last + LeastGap : at;
            if (last < from + SpellLength)
            {
                yield return new(last, angler, string.Create(CultureInfo.InvariantCulture, $"/catch log species:{species} length:{inches}in {place} fate:released"));
            }
        }

        yield return new(from + SpellLength, angler, "/lines up");
    }

    private IEnumerable<(DateTimeOffset At, string Species, double Inches)> Fish(
        string species, double perLineHour, DateTimeOffset from, double usual, double spread, double least)
    {
        for (var at = from + NextWait(perLineHour); at < from + SpellLength; at += NextWait(perLineHour))
        {
            yield return (at, species, Math.Max(least, Math.Round((usual + (spread * Normal())) * 4) / 4));
        }
    }

    private TimeSpan NextWait(double perLineHour) =>
        TimeSpan.FromHours(-Math.Log(1 - _random.NextDouble()) / (perLineHour * LinesEach));

    private double Normal() =>
        Math.Sqrt(-2 * Math.Log(1 - _random.NextDouble())) * Math.Cos(2 * Math.PI * _random.NextDouble());

    private string Pick(IReadOnlyList<string> from) => from[_random.Next(from.Count)];
}
