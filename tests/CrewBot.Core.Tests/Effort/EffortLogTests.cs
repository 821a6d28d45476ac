using CrewBot.Core.Effort;
using CrewBot.Core.Knowledge;
using CsCheck;
using UnitsNet;

namespace CrewBot.Core.Tests.Effort;

public sealed class EffortLogTests
{
    private static readonly DateTimeOffset Start = new(2027, 1, 15, 3, 0, 0, TimeSpan.FromHours(-6));

    private static readonly Gen<string?> AnyPresentation = Gen.OneOf((string?[])["jigging-spoon", "small-jig", null]);

    private static readonly Gen<FishedSpell[]> AnySpells = Gen.Select(
            Gen.Long[1, 2], Gen.Int[1, 3], Gen.Int[0, 2500], Gen.Int[0, 900], AnyPresentation, Gen.Int[-1, 2], Gen.Int[0, 60],
            (angler, lines, down, length, presentation, mood, feet) => new FishedSpell
            {
                Angler = angler,
                Lines = lines,
                Down = Start.AddMinutes(down),
                Up = Start.AddMinutes(down + length),
                Presentation = presentation,
                Mood = mood < 0 ? null : (Mood)mood,
                Depth = feet == 0 ? null : Length.FromFeet(feet),
            })
        .Array[0, 12];

    private static readonly Gen<CaughtFish[]> AnyFish = Gen.Select(
            Gen.Long[1, 3], Gen.OneOf((string[])["walleye", "yellow-perch"]), AnyPresentation, Gen.Int[0, 3400],
            (angler, species, presentation, minute) => new CaughtFish(angler, species, presentation, Start.AddMinutes(minute)))
        .Array[0, 40];

    // A plain recomputation: every minute of every line by itself, every fish against every spell.
    [Fact]
    public void By_AnySpellsAndFish_EqualsAPlainRecomputation() => Gen.Select(AnySpells, AnyFish).Sample((spells, fish) =>
    {
        var log = new EffortLog(spells, fish);
        var takers = fish.Select(caught => (caught, Spell: TakerOf(caught, spells))).ToList();

        var count = log.By([EffortDimension.Presentation, EffortDimension.Mood, EffortDimension.Depth, EffortDimension.Time], ["walleye"]);

        var known = spells.Where(spell => spell is { Presentation: not null, Mood: not null, Depth: not null }).ToList();
        var minutes = known
            .SelectMany(spell => Enumerable.Range(0, (int)(spell.Up - spell.Down).TotalMinutes)
                .Select(minute => (Key: KeyOf(spell, spell.Down.AddMinutes(minute)), spell.Lines)))
            .GroupBy(line => line.Key)
            .ToDictionary(cell => cell.Key, cell => cell.Sum(line => line.Lines));
        var walleyes = takers
            .Where(pair => pair.caught.Species == "walleye" && pair.Spell is not null && known.Contains(pair.Spell))
            .CountBy(pair => KeyOf(pair.Spell!, pair.caught.At))
            .ToDictionary();
        Assert.Equal(minutes.Keys.Union(walleyes.Keys).Order(), count.Cells.Where(IsFished).Select(cell => cell.Key.ToString()).Order());
        Assert.All(count.Cells, cell =>
        {
            Assert.Equal(minutes.GetValueOrDefault(cell.Key.ToString()) / 60.0, cell.Tally.LineTime.Hours, 9);
            Assert.Equal(walleyes.GetValueOrDefault(cell.Key.ToString()), cell.Tally.Fish);
        });
        Assert.Equal(takers.Where(pair => pair.Spell is null).Select(pair => pair.caught), log.WithoutHours);
        Assert.Equal(
            spells.Except(known).Sum(spell => spell.Lines * (spell.Up - spell.Down).TotalHours), count.Unrecorded.LineTime.Hours, 9);
    });

    [Fact]
    public void By_AnyDimensions_LosesNeitherAFishNorAnHour() => Gen.Select(AnySpells, AnyFish).Sample((spells, fish) =>
    {
        var log = new EffortLog(spells, fish);
        var all = log.Total("walleye");
        foreach (var dimension in Enum.GetValues<EffortDimension>())
        {
            var count = log.By([dimension], ["walleye"]);
            var sum = Tally.Total(count.Cells.Select(cell => cell.Tally).Append(count.Unrecorded));
            Assert.Equal(all.Fish, sum.Fish);
            Assert.Equal(all.LineTime.Hours, sum.LineTime.Hours, 9);
        }
    });

    // From the definition of the parts of a day: 9:00 to 15:00 is an hour of morning, four of midday, one of afternoon.
    [Fact]
    public void By_Time_SplitsASpellExactly()
    {
        var at = new DateTimeOffset(2027, 1, 16, 9, 0, 0, TimeSpan.FromHours(-6));
        var log = new EffortLog([new FishedSpell { Angler = 1, Lines = 2, Down = at, Up = at.AddHours(6) }], [new CaughtFish(1, "walleye", null, at.AddHours(1))]);

        var cells = log.By([EffortDimension.Time], ["walleye"]).Cells.ToDictionary(cell => cell.Key.Time!.Value, cell => cell.Tally);

        Assert.Equal(new Tally(0, Duration.FromHours(2)), cells[DayPart.Morning]);
        Assert.Equal(new Tally(1, Duration.FromHours(8)), cells[DayPart.Midday]);
        Assert.Equal(new Tally(0, Duration.FromHours(2)), cells[DayPart.Afternoon]);
    }

    // Pearson's statistic by hand: 8 and 0 fish in ten spells of an hour each at 4 an hour give 10 x 16/4 over 9.
    [Fact]
    public void Bunching_FishInEverySecondSpell_IsPearsonsStatisticOverItsFreedom()
    {
        var spells = Enumerable.Range(0, 11).Select(at => new Tally(at == 10 ? 4 : at % 2 * 8, Duration.FromHours(1))).ToList();

        Assert.Equal(10 * 16.0 / 4 / 10, Bunching.Of([new CellCount(new EffortKey(), spells)]), 12);
    }

    [Fact]
    public void DepthZone_AtABound_BelongsToTheDeeperZone()
    {
        Assert.Equal(20, DepthZone.Of(Length.FromFeet(20)).From.Feet, 9);
        Assert.Equal(10, DepthZone.Of(Length.FromFeet(19.99)).From.Feet, 9);
        Assert.Null(DepthZone.Of(Length.FromFeet(80)).To);
    }

    private static bool IsFished(CellCount cell) => cell.Tally is { Fish: > 0 } or { LineTime.Hours: > 0 };

    private static FishedSpell? TakerOf(CaughtFish fish, FishedSpell[] spells)
    {
        var down = spells.Where(spell => spell.Angler == fish.Angler && spell.Down <= fish.At && fish.At <= spell.Up).OrderBy(spell => spell.Down).ToList();
        if (fish.Presentation is null)
        {
            return down.Select(spell => spell.Presentation).Distinct().Count() == 1 ? down[^1] : null;
        }

        return down.LastOrDefault(spell => spell.Presentation == fish.Presentation) ?? down.LastOrDefault(spell => spell.Presentation is null);
    }

    private static string KeyOf(FishedSpell spell, DateTimeOffset at) => new EffortKey
    {
        Presentation = spell.Presentation,
        Mood = spell.Mood,
        Depth = spell.Depth!.Value.Feet switch
        {
            < 10 => DepthZone.All[0],
            < 20 => DepthZone.All[1],
            < 30 => DepthZone.All[2],
            < 50 => DepthZone.All[3],
            _ => DepthZone.All[4],
        },
        Time = at.Hour switch
        {
            >= 6 and < 10 => DayPart.Morning,
            >= 10 and < 14 => DayPart.Midday,
            >= 14 and < 18 => DayPart.Afternoon,
            >= 18 and < 22 => DayPart.Evening,
            _ => DayPart.Night,
        },
    }.ToString();
}
