using CrewBot.Core.Derbies;
using CrewBot.Core.Derbies.Ledger;
using CrewBot.Core.Derbies.Scoring;
using CrewBot.Core.Fish;
using CsCheck;
using UnitsNet.Units;

namespace CrewBot.Core.Tests.Derbies;

public sealed class ScoreboardTests
{
    private const int MostAnglers = 6;

    private static readonly string[] Keys = ["walleye", "yellow-perch", "northern-pike", "burbot"];

    private static readonly Dictionary<long, DateTimeOffset> NoneVoid = [];

    private static readonly Gen<DerbySettings> AnySettings =
        from measure in OneOf<FishMeasure>(
            new LengthMeasure(), new TrophyShareMeasure(), new CountMeasure(), new PointsMeasure(new Dictionary<string, decimal> { ["walleye"] = 1.1m, ["burbot"] = 0.3m }))
        from most in OneOf<int?>(null, 1, 2, 3)
        from ofEach in OneOf<int?>(null, 1, 2)
        from ties in OneOf<IReadOnlyList<TieBreak>>(
            [], [TieBreak.Earliest], [TieBreak.NextBest, TieBreak.Earliest], [TieBreak.BigFish], [TieBreak.BigFish, TieBreak.NextBest])
        from ranking in Gen.Enum<RankNumbers>()
        from teams in OneOf<TeamScoring?>(null, null, new TeamScoring(true), new TeamScoring(false), new TeamScoring(false, 2))
        from evidence in Gen.Enum<Evidence>()
        select WorkedContest.Settings with
        {
            Scoring = new(measure, new FishSelection(most, ofEach)),
            Ties = ties,
            Ranking = ranking,
            Teams = teams,
            Evidence = evidence,
        };

    private static readonly Gen<LedgerEvent[]> AnyLedger = Gen.Select(Gen.Int[0, 7], Gen.Int[1, MostAnglers], Gen.Int[0, 3], Gen.Int[80, 900], Gen.Int[0, 560])
        .Array[0, 40]
        .Select(moves => Written(moves).ToArray());

    [Fact]
    public void Standings_EventByEvent_EqualTheCountFromTheStart() =>
        AnySettings.Select(AnyLedger).Sample((settings, ledger) =>
        {
            var board = new Scoreboard(settings, WorkedContest.Fish);
            for (var length = 0; length < ledger.Length; length++)
            {
                board.Apply(ledger[length]);
                AssertSame(From(settings, ledger[..(length + 1)]), board.Standings());
            }
        });

    [Fact]
    public void Standings_RecordReplayedOrShuffled_AreTheSame() =>
        AnySettings.Select(AnyLedger, Gen.Int).Sample((settings, ledger, seed) =>
        {
            LedgerEvent[] shuffled = [.. ledger, .. ledger];
            new Random(seed).Shuffle(shuffled);

            AssertSame(From(settings, ledger), From(settings, shuffled));
        });

    // Fish of different anglers arrive in any order: only the numbers of the record change hands.
    [Fact]
    public void Standings_IndependentEntriesInAnotherOrder_AreTheSame() =>
        AnySettings.Select(AnyLedger, Gen.Int).Sample((settings, ledger, seed) =>
        {
            var entries = ledger.OfType<Entered>().ToArray();
            var numbers = entries.Select(entry => entry.Number).ToArray();
            new Random(seed).Shuffle(numbers);
            var first = entries.Zip(numbers, (entry, number) => entry with { Number = number }).ToList<LedgerEvent>();

            AssertSame(From(settings, entries), From(settings, first));
        });

    [Fact]
    public void Standings_OneMoreFish_NeverLowersItsAngler() =>
        AnySettings.Where(settings => settings.Teams is null).Select(AnyLedger, Gen.Int[80, 900], Gen.Int[1, MostAnglers]).Sample((settings, ledger, length, angler) =>
        {
            var more = Caught(ledger.Length + 1, angler, 0, length, 561) with { HasPhoto = true };
            var before = From(settings, ledger);
            var after = From(settings, [.. ledger, more, new Accepted(ledger.Length + 2, WorkedContest.At("17:50"), 1, more.Entry)]);
            if (before.Find(new Competitor(angler)) is not { } was)
            {
                return;
            }

            var now = after.Find(new Competitor(angler))!;
            Assert.True(now.Tally.Total >= was.Tally.Total);
            Assert.True(Better(before, was) >= Better(after, now));
        });

    [Fact]
    public void Standings_AmendedAndAmendedBack_AreTheSame() =>
        AnySettings.Select(AnyLedger, Gen.Int[80, 900]).Sample((settings, ledger, length) =>
        {
            if (ledger.OfType<Entered>().FirstOrDefault() is not { } entry)
            {
                return;
            }

            // Whatever was amended before is measured again from the record.
            var board = new Scoreboard(settings, WorkedContest.Fish);
            Array.ForEach(ledger, board.Apply);
            var measured = board.Entries[entry.Entry].Measured;
            var before = board.Standings();
            board.Apply(new Amended(ledger.Length + 1, entry.At, 1, entry.Entry, ExactLength.From(length, LengthUnit.Millimeter)));
            board.Apply(new Amended(ledger.Length + 2, entry.At, 1, entry.Entry, measured));

            AssertSame(before, board.Standings());
        });

    [Fact]
    public void Standings_LeaderWithdrawn_PromotesTheOthersWithTheirTotals() =>
        AnySettings.Where(settings => settings.Teams is null).Select(AnyLedger).Sample((settings, ledger) =>
        {
            var before = From(settings, ledger);
            if (before.Lines.Count == 0)
            {
                return;
            }

            var leader = before.Lines[0].Tally.Who.Angler!.Value;
            var after = From(settings, [.. ledger, new Left(ledger.Length + 1, WorkedContest.At("17:00"), leader, leader)]);

            Assert.Equal(before.Lines.Skip(1).Select(line => (line.Tally.Who, line.Tally.Total)), after.Lines.Select(line => (line.Tally.Who, line.Tally.Total)));
        });

    // How many competitors are better, whatever the numbering.
    private static int Better(Standings standings, Standing line) => standings.Lines.Count(other => other.Rank < line.Rank);

    private static Gen<T> OneOf<T>(params T[] values) => Gen.Int[0, values.Length - 1].Select(at => values[at]);

    private static Standings From(DerbySettings settings, IEnumerable<LedgerEvent> ledger) =>
        Standings.Of(settings, ledger, NoneVoid, WorkedContest.Fish, DateTimeOffset.MaxValue);

    private static void AssertSame(Standings one, Standings other)
    {
        Assert.Equal(one.Lines.Select(Flat), other.Lines.Select(Flat));
        Assert.Equal(one.Out, other.Out);

        static (decimal, bool, Competitor, decimal, TieBreak?, string) Flat(Standing line) =>
            (line.Rank, line.IsShared, line.Tally.Who, line.Tally.Total, line.PartedBy, string.Join(",", line.Tally.Used.Select(fish => fish.Entry.Number)));
    }

    private static IEnumerable<LedgerEvent> Written((int Kind, int Angler, int Species, int Length, int Minute)[] moves)
    {
        var entered = new List<Entered>();
        var number = 0;
        for (var angler = 1; angler <= MostAnglers; angler++)
        {
            yield return new Joined(++number, WorkedContest.At("07:30"), angler, angler, angler % 2 == 0 ? "North" : "South");
        }

        foreach (var (kind, angler, species, length, minute) in moves)
        {
            var at = WorkedContest.At("08:00").AddMinutes(minute);
            var entry = entered.Count > 0 ? entered[length % entered.Count].Entry : 0;
            if (kind <= 2 || entry == 0)
            {
                entered.Add(Caught(++number, angler, species, length, minute));
                yield return entered[^1];
                continue;
            }

            yield return kind switch
            {
                3 => new Witnessed(++number, at, angler, entry),
                4 => new Amended(++number, at, angler, entry, ExactLength.From(length, LengthUnit.Millimeter)),
                5 => new Disputed(++number, at, angler, entry, "doubt"),
                6 => new Ruled(++number, at, angler, entry, length % 2 == 0, "seen"),
                _ => new Penalised(++number, at, angler, entry, WorkedContest.Centimetres(length % 5), "late"),
            };
        }
    }

    private static Entered Caught(int number, long angler, int species, int millimetres, int minute)
    {
        var at = WorkedContest.At("08:00").AddMinutes(minute);
        return new Entered(number, at, angler, number, angler)
        {
            Catch = number,
            Species = Keys[species],
            Measured = ExactLength.From(millimetres, LengthUnit.Millimeter),
            CaughtAt = at.AddMinutes(-4),
            HasPhoto = millimetres % 3 == 0,
        };
    }
}
