using System.Globalization;
using CrewBot.Core.Knowledge;
using CrewBot.Core.Rigs;
using CsCheck;

namespace CrewBot.Core.Tests.Rigs;

/// <summary>What must hold of every plan, whatever is asked.</summary>
public sealed class RigPlannerPropertyTests
{
    private const int Often = 1000;

    private static readonly RigPlanner Planner = new(TradeKnowledge.BuiltIn);

    // The properties below speak of plans only: they would be empty if hardly any question had one.
    [Fact]
    public void Plan_AnyQuestion_MostlyHasAnAnswer()
    {
        var answered = 0;
        var asked = 0;

        Asks.Any.Sample(
            ask =>
            {
                Interlocked.Increment(ref asked);
                Interlocked.Add(ref answered, Planner.Plan(ask).Plan is null ? 0 : 1);
            },
            iter: Often);

        Assert.InRange((double)answered / asked, 0.4, 1);
    }

    [Fact]
    public void Plan_AnyQuestion_GivesEitherAPlanOrAnObstacle() =>
        Asks.Any.Sample(
            ask =>
            {
                var planning = Planner.Plan(ask);
                Assert.NotEqual(planning.Plan is null, planning.Obstacle is null);
                Assert.True(planning.Plan is null || planning.Plan.Alternatives.Count <= 2);
            },
            iter: Often, print: Asks.Print);

    [Fact]
    public void Plan_DeeperOrMoreCurrent_NeverGivesALighterLure() =>
        Gen.Select(Asks.AnyOfOnePresentation, Asks.AnyDepth, Asks.AnyCurrent).Sample(
            (ask, depth, current) =>
            {
                var easy = ask with { Depth = Least(ask.Depth, depth), Current = Least(ask.Current, current) };
                var hard = ask with { Depth = Most(ask.Depth, depth), Current = Most(ask.Current, current) };
                if (Planner.Plan(hard).Plan is not { } there)
                {
                    return;
                }

                var here = Planner.Plan(easy).Plan;
                Assert.NotNull(here); // what gets down deep gets down anywhere
                Assert.True(there.First.Lure.Weight.Grams >= here.First.Lure.Weight.Grams);
            },
            iter: Often, print: asked => $"{Asks.Print(asked.Item1)} against {asked.Item2.Meters} m {asked.Item3.MetersPerSecond} m/s");

    [Fact]
    public void Plan_MoreNegativeMood_NeverGivesALargerOrLouderLure() =>
        Asks.AnyOfOnePresentation.Sample(
            ask =>
            {
                var byMood = Enum.GetValues<Mood>()
                    .Select(mood => Planner.Plan(ask with { Mood = mood }).Plan?.First)
                    .OfType<Rig>();
                foreach (var (calmer, livelier) in Neighbours(byMood))
                {
                    Assert.True(calmer.Lure.Weight.Grams <= livelier.Lure.Weight.Grams);
                    Assert.True(calmer.LureLength.Meters <= livelier.LureLength.Meters);
                    Assert.True(calmer.Numbers.LureDiameter.Meters <= livelier.Numbers.LureDiameter.Meters);
                    Assert.True(calmer.Presentation.Loudness <= livelier.Presentation.Loudness);
                }
            },
            iter: Often, print: Asks.Print);

    [Fact]
    public void Plan_HeavierFish_NeverGivesALighterLine() =>
        Asks.AnyOfOnePresentation.Sample(
            ask =>
            {
                var bySize = Enum.GetValues<FishSize>()
                    .Select(size => Planner.Plan(ask with { Size = size }).Plan?.First.Tied)
                    .OfType<TiedRig>();
                foreach (var (lighter, heavier) in Neighbours(bySize))
                {
                    Assert.True(lighter.Mainline.Test.Newtons <= heavier.Mainline.Test.Newtons);
                    Assert.Equal(lighter.Leader is null, heavier.Leader is null);
                    Assert.True(lighter.Leader is null || lighter.Leader.Line.Test.Newtons <= heavier.Leader!.Line.Test.Newtons);
                }
            },
            iter: Often, print: Asks.Print);

    [Fact]
    public void Plan_EveryRig_PassesTheChecker() =>
        Asks.Any.Sample(
            ask => Assert.All(Planned.All(ask), rig => Assert.Empty(Planned.FaultsOf(ask, rig))),
            iter: 3 * Often, print: Asks.Print);

    [Fact]
    public void Plan_EveryRig_HoldsNothingThatIsBanned() =>
        Asks.Any.Sample(
            ask => Assert.All(Planned.All(ask), rig =>
            {
                Assert.DoesNotContain(rig.Presentation.Key, ask.Without);
                Assert.DoesNotContain(rig.Tied.Mainline.Material.Key, ask.Without);
                Assert.DoesNotContain(rig.Tied.Leader?.Line.Material.Key ?? "", ask.Without);
                Assert.DoesNotContain(rig.Lure.Material.Key, ask.Without);
                Assert.DoesNotContain(rig.Bait?.Key ?? "", ask.Without);
                Assert.False(rig.Presentation.Trebles > 0 && ask.Without.Contains(Ban.Treble));
                Assert.False(rig.Bait is { Kind: BaitKind.LiveFish } && ask.Without.Contains(Ban.LiveBait));
            }),
            iter: 3 * Often, print: Asks.Print);

    [Fact]
    public void Plan_EveryRig_KeepsTheRulesOfTheWater() =>
        Asks.Any.Where(ask => ask.Rules is not null).Sample(
            ask => Assert.All(Planned.All(ask), rig =>
            {
                Assert.False(rig.Lure.Material.Lead && ask.Rules!.LeadBanned == true);
                Assert.True(rig.Presentation.Hooks <= (ask.Rules!.HooksPerLine ?? int.MaxValue));
                Assert.True(rig.Presentation.Trebles <= (ask.Rules.TreblesPerLine ?? int.MaxValue));
                Assert.True(rig.Bait is null or { Kind: BaitKind.Soft } || ask.Rules.Baits?.Contains(rig.Bait.Kind) != false);
            }),
            iter: 3 * Often, print: Asks.Print);

    [Fact]
    public void Plan_WithACrewsExperience_OnlyOrdersWhatIsAllowed() =>
        Asks.AnyOfACrew.Sample(
            ask =>
            {
                var shown = ask.Species.Presentations[ask.Mood];
                var ordered = ask.Experience!.Order(shown);
                Assert.Equal(shown.Order(), ordered.Order());

                var allowed = ordered.Where(key => Planner.Plan(ask with { Presentation = TradeKnowledge.BuiltIn.Presentations[key] }).Plan is not null);
                var planned = Planned.All(ask).Select(rig => rig.Presentation.Key).Distinct().ToList();
                Assert.Equal(allowed.Take(planned.Count), planned);

                // Apart from their order and what is said of the crew, the rigs are those of a crew without a log.
                Assert.All(Planned.All(ask), rig => Assert.Contains(
                    Planned.All(ask with { Experience = null, Presentation = rig.Presentation }), plain => Essence(plain) == Essence(rig)));
            },
            iter: Often, print: Asks.Print);

    [Fact]
    public void Plan_WhatGoesAheadOfTheTradesFirst_HadItsHoursAndIsNearlyCertainlyBetter() =>
        Asks.AnyOfACrew.Sample(
            ask =>
            {
                var shown = ask.Species.Presentations[ask.Mood];
                var first = ask.Experience!.Order(shown)[0];
                if (first != shown[0])
                {
                    Assert.True(ask.Experience.Ways[first].Tally.LineTime.Hours >= 5);
                    Assert.True(ask.Experience.Ways[first].Posterior.ChanceOver(ask.Experience.Ways[shown[0]].Posterior) >= 0.97);
                }
            },
            iter: Often, print: Asks.Print);

    [Fact]
    public void Plan_SameQuestion_GetsTheSamePlan() =>
        Asks.Any.Sample(
            ask => Assert.Equal(Told(new RigPlanner(TradeKnowledge.BuiltIn), ask), Told(Planner, ask)),
            iter: Often, print: Asks.Print);

    [Fact]
    public void Plan_EveryRig_GivesAReasonForEachPartAndATriggerForEachCaution() =>
        Asks.Any.Sample(
            ask => Assert.All(Planned.All(ask), rig =>
            {
                Assert.Subset(rig.Reasons.Select(reason => reason.About).ToHashSet(), PartsOf(ask, rig).ToHashSet());
                Assert.All(rig.Reasons, reason => Assert.False(string.IsNullOrWhiteSpace(Told(reason.Why))));
                Assert.All(rig.Cautions, caution =>
                {
                    Assert.False(string.IsNullOrWhiteSpace(Told(caution.Text)));
                    Assert.False(string.IsNullOrWhiteSpace(Told(caution.Trigger)));
                });
            }),
            iter: Often, print: Asks.Print);

    [Fact]
    public void Plan_EveryNumber_IsFinite() =>
        Asks.Any.Sample(
            ask => Assert.All(Planned.All(ask), rig => Assert.All(NumbersOf(rig), number => Assert.True(double.IsFinite(number)))),
            iter: Often, print: Asks.Print);

    private static IEnumerable<string> PartsOf(RigAsk ask, Rig rig) =>
    [
        "presentation", "rod", "mainline", "knot", "weight", "hook", "bait", "where", "weakest link", "drag",
        "stretch", "drop", "hole",
        .. rig.Lure.IsPlainMetal ? new[] { "material" } : [],
        .. rig.Tied.Leader is null ? Array.Empty<string>() : ["join", "leader"],
        .. rig.Tied.Hardware.Select(piece => piece.Kind == HardwareKind.Swivel ? "swivel" : "snap"),
        .. ask.Current.MetersPerSecond > 0 ? new[] { "current" } : [],
    ];

    private static IEnumerable<double> NumbersOf(Rig rig)
    {
        var numbers = rig.Numbers;
        return
        [
            numbers.Weakest.Low.Newtons, numbers.Weakest.High.Newtons, numbers.Drag.Low.Newtons, numbers.Drag.High.Newtons,
            numbers.Stretch.Meters, numbers.LiftAtLure.Percent, numbers.WaterDensity.KilogramsPerCubicMeter,
            numbers.WaterViscosity.PascalSeconds, numbers.LureDiameter.Meters, numbers.WetWeight.Newtons,
            numbers.Settling.Slow.MetersPerSecond, numbers.Settling.Fast.MetersPerSecond, numbers.Drop.Fast.Seconds,
            numbers.Drop.Slow.Seconds, numbers.Blowback.AtHole.Degrees, numbers.Blowback.Offset.Meters, numbers.Hole.Margin.Meters,
        ];
    }

    private static string Essence(Rig rig) => string.Create(
        CultureInfo.InvariantCulture,
        $"{rig.Presentation.Key} {rig.Tied.Mainline} {rig.Tied.Leader} {rig.Tied.Join?.Key} {rig.Tied.LureKnot.Key} {rig.Lure.Weight.Grams:R} {rig.Lure.Material.Key} {rig.Hook} {rig.Bait?.Key}");

    private static string Told(RigPlanner planner, RigAsk ask)
    {
        var planning = planner.Plan(ask);
        return planning.Plan is { } plan
            ? string.Join('\n', new[] { plan.First }.Concat(plan.Alternatives).SelectMany(Told))
            : Told(planning.Obstacle!);
    }

    private static IEnumerable<string> Told(Rig rig) =>
    [
        rig.Presentation.Key, rig.Outfit.Key, string.Join(' ', NumbersOf(rig).Select(number => number.ToString("R", CultureInfo.InvariantCulture))),
        .. rig.Reasons.Select(reason => $"{reason.About}: {Told(reason.Why)}"),
        .. rig.Cautions.Select(caution => $"{Told(caution.Text)} ({Told(caution.Trigger)})"),
    ];

    private static string Told(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);

    private static IEnumerable<(T Before, T After)> Neighbours<T>(IEnumerable<T> items)
    {
        var all = items.ToList();
        return all.Zip(all.Skip(1));
    }

    private static T Least<T>(T one, T other)
        where T : IComparable => one.CompareTo(other) <= 0 ? one : other;

    private static T Most<T>(T one, T other)
        where T : IComparable => one.CompareTo(other) <= 0 ? other : one;
}
