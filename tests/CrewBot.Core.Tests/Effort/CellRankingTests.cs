using CrewBot.Core.Effort;
using CsCheck;
using UnitsNet;

namespace CrewBot.Core.Tests.Effort;

public sealed class CellRankingTests
{
    private static readonly Gen<EffortCell[]> AnyCells = Gen
        .Select(Gen.Int[0, 60], Gen.Double[0, 80], Gen.Double[0.1, 2], Gen.Double[1, 20])
        .Array[0, 8]
        .Select(drawn => drawn
            .Select((cell, index) => Cell($"cell {index}", cell.Item1, cell.Item2, cell.Item3, cell.Item4))
            .ToArray());

    [Fact]
    public void Of_ThreeLuckyFish_DoNotOutrankASeason()
    {
        var ranking = CellRanking.Of([Cell("lucky", 3, 1), Cell("season", 40, 40)]);

        Assert.Equal(["season", "lucky"], Keys(ranking));
        Assert.Equal(Certainty.TooEarly, ranking.Lead);
    }

    // A season a quarter better than was expected, and a lucky spell however short.
    [Fact]
    public void Of_ThreeFishInAnySpell_NeverOutrankAGoodSeason() =>
        Gen.Select(Gen.Double[0.5, 3], Gen.Double[1.25, 4], Gen.Double[40, 200], Gen.Double[0.25, 40])
            .Sample((expected, better, seasonHours, luckyHours) =>
            {
                var season = (int)Math.Ceiling(expected * better * seasonHours);
                var ranking = CellRanking.Of(
                    [Cell("lucky", 3, luckyHours, expected, 8), Cell("season", season, seasonHours, expected, 8)]);

                return ranking.Cells[0].Cell.Key == "season";
            });

    [Fact]
    public void Of_GoodSeasonAndPoorOne_IsNearlyCertain()
    {
        var ranking = CellRanking.Of([Cell("poor", 20, 40), Cell("good", 40, 40)]);

        Assert.Equal(["good", "poor"], Keys(ranking));
        Assert.Equal(0.0069669375, ranking.Cells[1].ChanceOverFirst, 1e-8); // 1 - 0.9930330625, by quadrature
        Assert.Equal(Certainty.NearlyCertain, ranking.Lead);
        Assert.Null(ranking.TryNext);
    }

    [Fact]
    public void TryNext_UntriedCellOfGoodName_IsIt()
    {
        var ranking = CellRanking.Of([Cell("known", 24, 40), Cell("poor", 4, 40), Cell("untried", 0, 0, 0.6, 8)]);

        Assert.Equal("known", ranking.Cells[0].Cell.Key);
        Assert.Equal("untried", ranking.TryNext!.Cell.Key);
    }

    [Fact]
    public void Of_AnyCells_KeepsThemAllWhateverTheirOrder() =>
        Gen.Select(AnyCells, Gen.Int[0, 7]).Sample((cells, turn) =>
        {
            var at = cells.Length == 0 ? 0 : turn % cells.Length;
            var ranking = CellRanking.Of(cells);

            Assert.Equal(Keys(ranking), Keys(CellRanking.Of(cells[at..].Concat(cells[..at]).Reverse())));
            Assert.Equal(cells.Length, ranking.Cells.Count);
            Assert.Equal(
                ranking.Cells
                    .OrderByDescending(cell => cell.Cell.Tally.LineTime.Hours > 0)
                    .ThenByDescending(cell => cell.Credible.Low.PerLineHour)
                    .Select(cell => cell.Cell.Key),
                Keys(ranking));
        });

    [Fact]
    public void Of_AnotherFishInACell_NeverLowersItsPlace() =>
        AnyCells.Where(cells => cells.Length > 1).Sample(cells =>
        {
            var before = Keys(CellRanking.Of(cells)).IndexOf(cells[0].Key);
            var more = cells[0] with { Tally = new Tally(cells[0].Tally.Fish + 1, cells[0].Tally.LineTime) };

            return Keys(CellRanking.Of([more, .. cells[1..]])).IndexOf(more.Key) <= before;
        });

    [Fact]
    public void Of_EqualCells_RankByKey() =>
        Assert.Equal(["a", "b", "c"], Keys(CellRanking.Of([Cell("c", 3, 6), Cell("a", 3, 6), Cell("b", 3, 6)])));

    [Fact]
    public void Lead_FewerThanTwoCells_IsNoComparison()
    {
        Assert.Null(CellRanking.Of([]).Lead);
        Assert.Null(CellRanking.Of([Cell("only", 3, 6)]).Lead);
        Assert.Null(CellRanking.Of([]).TryNext);
    }

    [Fact]
    public void Of_TwoCellsOfOneKey_Throws() =>
        Assert.Throws<ArgumentException>("cells", () => CellRanking.Of([Cell("a", 1, 1), Cell("a", 2, 2)]));

    // The bands are judgement; each bound belongs to the surer word.
    [Theory]
    [InlineData(0.5, 5, 40, "too close to call")]
    [InlineData(0.69, 5, 40, "too close to call")]
    [InlineData(0.70, 5, 40, "leaning that way")]
    [InlineData(0.84, 5, 40, "leaning that way")]
    [InlineData(0.85, 5, 40, "likely")]
    [InlineData(0.96, 5, 40, "likely")]
    [InlineData(0.97, 5, 40, "nearly certain")]
    [InlineData(0.999, 4.9, 40, "too early to say")]
    [InlineData(0.999, 40, 4.9, "too early to say")]
    public void Certainties_OfAChance_SayIt(double chance, double hours, double otherHours, string words) => Assert.Equal(
        words,
        Certainties.Of(chance, new Tally(1, Duration.FromHours(hours)), new Tally(1, Duration.FromHours(otherHours))).Words());

    [Fact]
    public void Certainties_OfNoProbability_Throw() => Assert.Throws<ArgumentOutOfRangeException>(
        "chance", () => Certainties.Of(1.01, new Tally(1, Duration.FromHours(9)), new Tally(1, Duration.FromHours(9))));

    private static List<string> Keys(CellRanking ranking) => [.. ranking.Cells.Select(cell => cell.Cell.Key)];

    private static EffortCell Cell(string key, int fish, double hours, double prior = 0.5, double weight = 8) =>
        new(key, new Tally(fish, Duration.FromHours(hours)), new CatchPrior(new CatchRate(prior), Duration.FromHours(weight)));
}
