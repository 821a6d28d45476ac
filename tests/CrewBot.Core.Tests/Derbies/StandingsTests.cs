using System.Globalization;
using CrewBot.Core.Derbies;
using CrewBot.Core.Derbies.Ledger;
using CrewBot.Core.Derbies.Scoring;
using CrewBot.Core.Fish;
using UnitsNet.Units;

namespace CrewBot.Core.Tests.Derbies;

public sealed class StandingsTests
{
    private static readonly Dictionary<long, DateTimeOffset> NoneVoid = [];

    private static readonly Dictionary<string, decimal> Factors = new()
    {
        ["yellow-perch"] = 2,
        ["black-crappie"] = 2,
        ["bluegill"] = 2.5m,
        ["walleye"] = 1,
        ["burbot"] = 1,
        ["lake-trout"] = 0.9m,
        ["northern-pike"] = 0.75m,
    };

    public static TheoryData<string, string, string, string> Examples =>
        [.. HandbookPage.Rows("scoring |").Select(row => new TheoryDataRow<string, string, string, string>(row[0], row[1], row[2], row[3]))];

    public static TheoryData<string, string> TieExamples =>
        [.. HandbookPage.Rows("ties | order").Select(row => new TheoryDataRow<string, string>(row[0], row[1]))];

    public static TheoryData<string, string> RankExamples =>
        [.. HandbookPage.Rows("ranking | places").Select(row => new TheoryDataRow<string, string>(row[0], row[1]))];

    [Fact]
    public void Examples_OfTheHandbook_AreAllThere()
    {
        Assert.Equal(18, Examples.Count);
        Assert.Equal(4, TieExamples.Count);
        Assert.Equal(4, RankExamples.Count);
    }

    [Theory]
    [MemberData(nameof(Examples))]
    public void Of_WorkedContest_GivesTheHandbooksStandings(string scoring, string ties, string ranking, string expected)
    {
        var (settings, asOf) = Told(scoring);
        settings = settings with { Ties = TiesOf(ties), Ranking = RankingOf(ranking) };
        var ledger = scoring.Contains("overruled", StringComparison.Ordinal)
            ? WorkedContest.Ledger.Append(new Ruled(99, WorkedContest.At("15:30"), 2, 18, true, "two saw it"))
            : WorkedContest.Ledger;

        var standings = Standings.Of(settings, ledger, NoneVoid, WorkedContest.Fish, asOf);

        Assert.Equal(expected, string.Join(", ", standings.Lines.Select(line => Text(line, DecimalsIn(expected)))));
    }

    [Fact]
    public void Of_WorkedContest_ScoresEveryEntryAsTheHandbookSays()
    {
        var settings = WorkedContest.Settings with { Scoring = ScoringRule.BestTotal(50) };
        var standings = Standings.Of(settings, WorkedContest.Ledger, NoneVoid, WorkedContest.Fish, WorkedContest.At("16:00"));
        var scored = standings.Lines.SelectMany(line => line.Tally.Used)
            .ToDictionary(fish => fish.Entry.Number, fish => fish.Scored.Number.ToString("0.0", CultureInfo.InvariantCulture));
        var gone = standings.Out.ToDictionary(entry => entry.Entry.Number, entry => entry.Why.ToString());

        foreach (var row in HandbookPage.Rows("id |"))
        {
            var number = int.Parse(row[0], CultureInfo.InvariantCulture);
            Assert.Equal(row[9], scored.GetValueOrDefault(number) ?? gone[number]);
        }
    }

    [Theory]
    [MemberData(nameof(TieExamples))]
    public void Of_EqualTotals_PartsThemInTheDeclaredOrder(string ties, string expected)
    {
        (string Who, decimal Length, string At)[] fish =
        [
            ("A", 30.0m, "09:00"), ("A", 25.0m, "10:00"), ("A", 21.5m, "12:10"), ("B", 28.0m, "08:30"), ("B", 27.0m, "09:40"),
            ("C", 35.0m, "11:00"), ("C", 20.0m, "11:30"), ("C", 19.5m, "12:00"),
        ];
        var ledger = fish.Select((one, at) => Fish(at + 1, one.Who[0], one.Length, one.At));
        var settings = WorkedContest.Settings with { Scoring = ScoringRule.BestTotal(2), Ties = TiesOf(ties) };

        var lines = Standings.Of(settings, ledger, NoneVoid, WorkedContest.Fish, WorkedContest.At("16:00")).Lines;

        Assert.All(lines, line => Assert.Equal(55.0m, line.Tally.Total));
        Assert.Equal(expected, string.Join(lines[0].IsShared ? "=" : ", ", lines.Select(line => (char)line.Tally.Who.Angler!)));
    }

    [Theory]
    [MemberData(nameof(RankExamples))]
    public void Of_LevelTotals_NumbersPlacesAsDeclared(string ranking, string expected)
    {
        decimal[] lengths = [52.5m, 60, 52.5m, 41, 60, 60, 12.5m];
        var ledger = lengths.Select((length, at) => Fish(at + 1, 'A' + at, length, "09:00"));
        var settings = WorkedContest.Settings with { Ranking = RankingOf(ranking) };

        var lines = Standings.Of(settings, ledger, NoneVoid, WorkedContest.Fish, WorkedContest.At("16:00")).Lines;

        Assert.Equal(expected, string.Join(" ", lines.Select(line => line.Rank.ToString("0.#", CultureInfo.InvariantCulture))));
    }

    [Fact]
    public void Of_CatchThatBecameVoid_LosesItFromThenOn()
    {
        var voided = new Dictionary<long, DateTimeOffset> { [103] = WorkedContest.At("14:00") };

        var before = Standings.Of(WorkedContest.Settings, WorkedContest.Ledger, voided, WorkedContest.Fish, WorkedContest.At("13:59"));
        var after = Standings.Of(WorkedContest.Settings, WorkedContest.Ledger, voided, WorkedContest.Fish, WorkedContest.At("14:00"));

        Assert.Equal(76.0m, before.Find(new Competitor(2))!.Tally.Total);
        Assert.Equal(26.0m, after.Find(new Competitor(2))!.Tally.Total);
        Assert.Equal(OutReason.Void, Assert.Single(after.Out, gone => gone.Entry.Number == 3).Why);
    }

    [Fact]
    public void Of_CrewmatesWordAsked_CountsOnlyWhatSomebodySawOrAStewardTook()
    {
        var settings = WorkedContest.Settings with { Evidence = Evidence.Crewmate };
        LedgerEvent[] ledger =
        [
            Fish(1, 1, 30, "09:00"), Fish(2, 2, 31, "09:00"), Fish(3, 3, 32, "09:00"),
            new Witnessed(4, WorkedContest.At("09:10"), 3, 1), new Accepted(5, WorkedContest.At("09:11"), 9, 2),
        ];

        var standings = Standings.Of(settings, ledger, NoneVoid, WorkedContest.Fish, WorkedContest.At("16:00"));

        Assert.Equal([2L, 1L], standings.Lines.Select(line => line.Tally.Who.Angler!.Value));
        Assert.Equal(OutReason.Waiting, Assert.Single(standings.Out).Why);
    }

    [Fact]
    public void Above_ThirdPlace_IsTheLineThatIsBetterAndSaysWhatPartedThem()
    {
        var settings = WorkedContest.Settings with { Ties = [TieBreak.Earliest] };
        var standings = Standings.Of(settings, WorkedContest.Ledger, NoneVoid, WorkedContest.Fish, WorkedContest.At("16:00"));

        Assert.Equal("Eli", WorkedContest.NameOf(standings.Above(new Competitor(6))!.Tally.Who));
        Assert.Equal(TieBreak.Earliest, standings.Find(new Competitor(5))!.PartedBy);
        Assert.Null(standings.Find(new Competitor(6))!.PartedBy);
        Assert.Null(standings.Above(new Competitor(2)));
    }

    [Theory]
    [InlineData("09:00", "09:00", OutReason.AnglerLeft)]
    [InlineData("07:59", "09:00", OutReason.AnglerLeft)]
    public void Of_AnglerWhoLeft_HasNoFishUntilTheyJoinAgain(string caught, string left, OutReason why)
    {
        LedgerEvent[] ledger = [Fish(1, 1, 30, caught), new Left(2, WorkedContest.At(left), 1, 1)];
        LedgerEvent[] again = [.. ledger, new Joined(3, WorkedContest.At("10:00"), 1, 1, null)];

        Assert.Equal(why, Assert.Single(Of(ledger).Out).Why);
        Assert.DoesNotContain(Of(again).Out, gone => gone.Why == OutReason.AnglerLeft);

        static Standings Of(LedgerEvent[] ledger) =>
            Standings.Of(WorkedContest.Settings, ledger, NoneVoid, WorkedContest.Fish, WorkedContest.At("16:00"));
    }

    // Midnight, and a night in which clocks go forward: 2027-03-14 02:00 becomes 03:00 in Winnipeg.
    [Fact]
    public void Of_WindowAcrossMidnightAndSummerTime_ComparesInstants()
    {
        var (winter, summer) = (TimeSpan.FromHours(-6), TimeSpan.FromHours(-5));
        var settings = WorkedContest.Settings with
        {
            Window = new DerbyWindow(new(2027, 3, 13, 22, 0, 0, winter), new(2027, 3, 14, 4, 0, 0, summer), TimeSpan.Zero),
        };
        LedgerEvent Caught(int number, DateTimeOffset at) => Fish(number, number, 30, "09:00") with { At = at, CaughtAt = at };
        LedgerEvent[] ledger =
        [
            Caught(1, new(2027, 3, 13, 21, 59, 59, winter)), Caught(2, new(2027, 3, 14, 0, 0, 0, winter)),
            Caught(3, new(2027, 3, 14, 4, 0, 0, summer)), Caught(4, new(2027, 3, 14, 4, 0, 0, winter)),
        ];

        var standings = Standings.Of(settings, ledger, NoneVoid, WorkedContest.Fish, DateTimeOffset.MaxValue);

        Assert.Equal([2L, 3L], standings.Lines.Select(line => line.Tally.Who.Angler!.Value).Order());
        Assert.Equal(TimeSpan.FromHours(5), settings.Window.Ends - settings.Window.Starts);
    }

    internal static Entered Fish(int number, long angler, decimal centimetres, string at) =>
        new(number, WorkedContest.At(at), angler, number, angler)
        {
            Catch = number,
            Species = "walleye",
            Measured = ExactLength.From(centimetres, LengthUnit.Centimeter),
            CaughtAt = WorkedContest.At(at),
        };

    private static (DerbySettings Settings, DateTimeOffset AsOf) Told(string scoring)
    {
        var settings = WorkedContest.Settings;
        var evening = WorkedContest.At("16:00");
        FishMeasure length = new LengthMeasure();
        return scoring switch
        {
            "longest" or "longest, after the protest is overruled" => (settings, evening),
            "longest, as of 11:00" => (settings, WorkedContest.At("11:00")),
            "best 2" => (settings with { Scoring = ScoringRule.BestTotal(2) }, evening),
            "best 3" => (settings with { Scoring = ScoringRule.BestTotal(3) }, evening),
            "one of each" => (settings with { Scoring = new(length, new FishSelection(MostOfEach: 1)) }, evening),
            "best 1 per species, best 2" => (settings with { Scoring = new(length, new FishSelection(2, 1)) }, evening),
            "longest walleye" => (settings with { Limits = settings.Limits with { Species = ["walleye"] } }, evening),
            "points" => (settings with { Scoring = new(new PointsMeasure(Factors), new FishSelection()) }, evening),
            "species-fair, best 1" => (settings with { Scoring = new(new TrophyShareMeasure(), new FishSelection(1)) }, evening),
            "species-fair, best 3" => (settings with { Scoring = new(new TrophyShareMeasure(), new FishSelection(3)) }, evening),
            "most fish" => (settings with { Scoring = new(new CountMeasure(), new FishSelection()) }, evening),
            "teams, members' best 3" => (settings with { Scoring = ScoringRule.BestTotal(3), Teams = new(IsPooled: false) }, evening),
            "teams, best 1 member's best 3" => (settings with { Scoring = ScoringRule.BestTotal(3), Teams = new(IsPooled: false, 1) }, evening),
            "teams, pooled best 5" => (settings with { Scoring = ScoringRule.BestTotal(5), Teams = new(IsPooled: true) }, evening),
            _ => throw new ArgumentOutOfRangeException(nameof(scoring), scoring, "The handbook has an example that no test runs."),
        };
    }

    private static IReadOnlyList<TieBreak> TiesOf(string words) => words == "shared" ? [] :
    [
        .. words.Split(", ").Select(word => word switch
        {
            "next best" => TieBreak.NextBest,
            "big fish" => TieBreak.BigFish,
            "earlier" => TieBreak.Earliest,
            _ => throw new ArgumentOutOfRangeException(nameof(words), word, "No such tie rule."),
        }),
    ];

    private static RankNumbers RankingOf(string word) => word switch
    {
        "1224" => RankNumbers.Standard,
        "1223" => RankNumbers.Dense,
        "1334" => RankNumbers.Modified,
        "fractional" => RankNumbers.Fractional,
        _ => throw new ArgumentOutOfRangeException(nameof(word), word, "No such numbering."),
    };

    private static int DecimalsIn(string standings) =>
        standings.Split(", ")[0] is var first && first.IndexOf('.', StringComparison.Ordinal) is var point and >= 0 ? first.Length - point - 1 : 0;

    private static string Text(Standing line, int decimals) =>
        $"{line.Rank:0.#} {WorkedContest.NameOf(line.Tally.Who)} {line.Tally.Total.ToString($"F{decimals}", CultureInfo.InvariantCulture)}";
}
