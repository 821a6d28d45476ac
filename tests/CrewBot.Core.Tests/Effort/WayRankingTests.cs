using CrewBot.Core.Effort;
using CrewBot.Core.Knowledge;

namespace CrewBot.Core.Tests.Effort;

/// <summary>Seasons drawn at random with an effect planted or not: what is found must be there.</summary>
public sealed class WayRankingTests
{
    private const int Seasons = 200;

    private static readonly string[] Ways = ["set-bait", "small-jig", "jigging-spoon", "swimming-jig"];

    private static readonly Species Walleye = TradeKnowledge.BuiltIn.Species["walleye"];

    [Fact]
    public void Of_NoEffectPlanted_SeldomClaimsOne()
    {
        var claims = Enumerable.Range(0, Seasons).Count(seed => LeadOf(Season(seed, planted: 1)) >= Certainty.Likely);

        // Certainty.Likely is from 85 %, so that a claim in seven would be right in the long run; the union bound makes it rarer.
        Assert.InRange(claims, 0, Seasons / 7);
    }

    [Fact]
    public void Of_AWayPlantedThatCatchesTwiceAsMuch_IsNearlyAlwaysFound()
    {
        var found = Enumerable.Range(0, Seasons)
            .Select(seed => RankedOf(Season(seed, planted: 2)))
            .Count(ranking => ranking.Lead >= Certainty.Likely && ranking.Cells[0].Cell.Key.StartsWith("swimming-jig", StringComparison.Ordinal));

        Assert.InRange(found, Seasons * 9 / 10, Seasons);
    }

    // Fish that come four at a time look like more evidence than they are.
    [Fact]
    public void Of_SchoolingFishAndNoEffect_SeldomClaimsOne()
    {
        var claims = Enumerable.Range(0, Seasons).Count(seed => LeadOf(Season(seed, planted: 1, school: 4)) >= Certainty.Likely);

        Assert.InRange(claims, 0, Seasons / 7);
    }

    [Fact]
    public void Of_NothingFished_RanksNothingAndTriesWhatTheTradeShowsFirst()
    {
        var ways = WayRanking.Of(new EffortLog([], []), Walleye, [EffortDimension.Presentation], null, TradeKnowledge.BuiltIn);

        Assert.Empty(ways.Fished);
        Assert.Equal("jigging-spoon", ways.Keys[ways.Ranking.Cells[0].Cell.Key].Presentation);
    }

    private static CellRanking RankedOf(EffortLog log) =>
        WayRanking.Of(log, Walleye, [EffortDimension.Presentation], null, TradeKnowledge.BuiltIn).Ranking;

    private static Certainty? LeadOf(EffortLog log) => RankedOf(log).Lead;

    // Sixty spells of two hours for each of four ways, at 0.4 a line-hour; the planted way catches as many times more.
    private static EffortLog Season(int seed, double planted, int school = 1)
    {
        var random = new Random(seed);
        var spells = new List<FishedSpell>();
        var fish = new List<CaughtFish>();
        for (var at = 0; at < 240; at++)
        {
            var way = Ways[at % Ways.Length];
            var down = new DateTimeOffset(2027, 1, 1, 12, 0, 0, TimeSpan.Zero).AddHours(3 * at);
            spells.Add(new FishedSpell { Angler = 1, Lines = 1, Down = down, Up = down.AddHours(2), Presentation = way });
            var schools = Draw(random, 2 * 0.4 * (way == "swimming-jig" ? planted : 1) / school);
            fish.AddRange(Enumerable.Repeat(new CaughtFish(1, "walleye", way, down.AddHours(1)), schools * school));
        }

        return new EffortLog(spells, fish);
    }

    // Knuth's method: multiply uniform numbers until they fall below e^-mean.
    private static int Draw(Random random, double mean)
    {
        var (count, product) = (0, random.NextDouble());
        while (product > Math.Exp(-mean))
        {
            product *= random.NextDouble();
            count++;
        }

        return count;
    }
}
