using System.Globalization;
using CrewBot.Core.Derbies;
using CrewBot.Core.Derbies.Ledger;
using CrewBot.Core.Derbies.Scoring;
using CrewBot.Core.Fish;
using CrewBot.Core.Knowledge;
using UnitsNet.Units;

namespace CrewBot.Core.Tests.Derbies;

/// <summary>
/// The contest of the handbook's table. Its entries and standings were computed twice, by programs in two languages with
/// exact fractions, before this code was written.
/// </summary>
internal static class WorkedContest
{
    public static readonly RecordSet<Species> Fish = TradeKnowledge.BuiltIn.Species;

    public static readonly string[] Anglers = ["Ana", "Bo", "Cy", "Dee", "Eli", "Fay"];

    public static DerbySettings Settings { get; } = new()
    {
        Window = new DerbyWindow(At("08:00"), At("15:00"), TimeSpan.FromMinutes(15)),
        Grid = new MeasuringGrid(Centimetres(0.5m)),
        Scoring = ScoringRule.Longest,
        Limits = new EntryLimits { Minimum = Centimetres(10) },
        Evidence = Evidence.OwnWord,
    };

    public static DateTimeOffset At(string clock) =>
        new(new DateOnly(2027, 1, 16), TimeOnly.Parse(clock, CultureInfo.InvariantCulture), TimeSpan.FromHours(-6));

    public static ExactLength Centimetres(decimal number) => ExactLength.From(number, LengthUnit.Centimeter);

    /// <summary>The record: everybody joins, then entries and decisions in the order in which they were received.</summary>
    public static IReadOnlyList<LedgerEvent> Ledger { get; } = [.. Written()];

    public static string NameOf(Competitor who) => who.Team ?? Anglers[(int)who.Angler! - 1];

    private static IEnumerable<LedgerEvent> Written()
    {
        var number = 0;
        var rows = HandbookPage.Rows("id |").ToList();
        foreach (var (angler, team) in rows.Select(row => (row[1], row[2])).Distinct())
        {
            yield return new Joined(++number, At("07:30"), 1, Number(angler), team);
        }

        foreach (var row in rows.OrderBy(row => At(row[6])))
        {
            var (entry, at) = (int.Parse(row[0], CultureInfo.InvariantCulture), At(row[6]));
            Assert.True(Fish.TryFind(row[3], out var species));
            yield return new Entered(++number, at, Number(row[1]), entry, Number(row[1]))
            {
                Catch = 100 + entry,
                Species = species.Key,
                Measured = ExactLength.From(decimal.Parse(row[4], CultureInfo.InvariantCulture), LengthUnit.Millimeter),
                CaughtAt = At(row[5]),
            };
            if (row[7] == "disputed")
            {
                yield return new Disputed(++number, at, 2, entry, "no photo");
            }

            if (row[7] == "refused")
            {
                yield return new Refused(++number, at, 2, entry, "not measured on the board");
            }

            if (row[8] != "0")
            {
                yield return new Penalised(++number, at, 2, entry, Centimetres(decimal.Parse(row[8], CultureInfo.InvariantCulture)), "late to the board");
            }
        }
    }

    private static long Number(string angler) => Array.IndexOf(Anglers, angler) + 1;
}
