using System.Globalization;
using CrewBot.Core.Knowledge;
using CrewBot.Core.Rigs;
using CsCheck;
using UnitsNet;

namespace CrewBot.Core.Tests.Rigs;

/// <summary>Rigs from a box, and what to buy for it.</summary>
public sealed class TackleTests
{
    private const int Often = 500;

    private static readonly PurchaseAdviser Adviser = new(Planned.Planner);

    [Fact]
    public void Plan_FromAnyBox_HoldsNothingButWhatIsInItAndPassesTheChecker()
    {
        var planned = 0;

        Asks.AnyFromABox.Sample(
            ask => Assert.All(Planned.All(ask), rig =>
            {
                Interlocked.Increment(ref planned);
                Assert.True(ask.Tackle!.Holds(Tackle.Of(rig)));
                Assert.Empty(Planned.FaultsOf(ask, rig));
                Assert.False(ask.Species.LineShyness != Shyness.Low && (rig.Tied.Leader?.Line ?? rig.Tied.Mainline).Material.Use == LineUse.Main);
                Assert.DoesNotContain(rig.Tied.Mainline.Material.Key, ask.Without);
                Assert.DoesNotContain(rig.Lure.Material.Key, ask.Without);
                Assert.False(rig.Lure.Material.Lead && ask.Rules?.LeadBanned == true);
                Assert.All(rig.Reasons, reason => Assert.False(string.IsNullOrWhiteSpace(reason.Why.ToString(CultureInfo.InvariantCulture))));
            }),
            iter: 6 * Often, print: Asks.Print);

        Assert.True(planned > Often / 10, $"{planned} rigs are too few to tell");
    }

    [Fact]
    public void Plan_FromABoxWithAllThatSuits_IsThePlanWithoutABox() =>
        Asks.Any.Where(ask => Planned.Planner.Plan(ask).Plan is not null).Sample(
            ask =>
            {
                var plain = Planned.Planner.Plan(ask).Plan!.First;
                var boxed = Planned.Planner.Plan(ask with { Tackle = Tackle.Of(plain), Presentation = plain.Presentation }).Plan?.First;
                Assert.NotNull(boxed);
                Assert.Equal(plain.Tied.Mainline.Test.Newtons, boxed.Tied.Mainline.Test.Newtons);
                Assert.Equal(plain.Tied.Leader?.Line.Test.Newtons, boxed.Tied.Leader?.Line.Test.Newtons);
                Assert.Equal(plain.Lure.Weight.Grams, boxed.Lure.Weight.Grams);
                Assert.Equal(plain.Hook, boxed.Hook);
            },
            iter: Often, print: Asks.Print);

    // Whatever is bought, it is not in the box yet; alone it makes a rig possible, unless it says what else is needed.
    [Fact]
    public void Advise_AnyBox_NamesSomethingThatHelps() =>
        Asks.AnyFromABox.Sample(
            ask =>
            {
                var purchase = Adviser.Advise(ask);
                if (Planned.Planner.Plan(ask with { Tackle = null }).Plan is null)
                {
                    Assert.Null(purchase);
                }
                else if (Planned.Planner.Plan(ask).Plan is null)
                {
                    Assert.NotNull(purchase);
                    Assert.False(string.IsNullOrWhiteSpace(purchase.What.ToString(CultureInfo.InvariantCulture)));
                }
            },
            iter: Often, print: Asks.Print);

    [Theory]
    [InlineData("jigging-spoon", 0.25, "6", "braid 10, leader 10: a spoon that suits")]
    public void Advise_ABoxWithAllThatSuitsBest_NamesNothing(string presentation, double ounces, string hook, string why)
    {
        var box = new Tackle { Lines = [Braid(10)], Leaders = [Fluorocarbon(10)], Lures = [Of(presentation, ounces)], Hooks = [HookSize.Parse(hook)] };
        var ask = Asks.For("walleye") with { Tackle = box };

        Assert.Equal(presentation, Planned.Planner.Plan(ask).Plan!.First.Presentation.Key);
        Assert.True(Adviser.Advise(ask) is null, why);
    }

    [Fact]
    public void Advise_NoMainline_NamesTheMainline()
    {
        var box = new Tackle { Leaders = [Fluorocarbon(10)], Lures = [Of("jigging-spoon", 0.25)] };

        var purchase = Adviser.Advise(Asks.For("walleye") with { Tackle = box })!;

        Assert.Equal("10 lbf braid", Told(purchase.What));
        Assert.Equal("then a jigging spoon can be tied", Told(purchase.Why));
        Assert.Empty(purchase.Also);
    }

    [Fact]
    public void Advise_OnlyTheSecondPresentation_NamesTheLureOfTheFirst()
    {
        var box = new Tackle { Lines = [Braid(8)], Leaders = [Fluorocarbon(8)], Lures = [Of("small-jig", 1.0 / 16)] };
        var ask = Asks.For("walleye") with { Tackle = box };

        Assert.Equal("small-jig", Planned.Planner.Plan(ask).Plan!.First.Presentation.Key);
        Assert.Equal("then a jigging spoon can be tied, which goes ahead of a small jig for neutral walleye", Told(Adviser.Advise(ask)!.Why));
    }

    [Fact]
    public void Advise_AnEmptyBox_NamesAllThatARigNeeds()
    {
        var purchase = Adviser.Advise(Asks.For("walleye") with { Tackle = new Tackle() })!;

        Assert.Equal(2, purchase.Also.Count);
    }

    private static LineChoice Braid(double pounds) => new(Planned.Trade.Lines["braid"], Force.FromPoundsForce(pounds));

    private static LineChoice Fluorocarbon(double pounds) => new(Planned.Trade.Lines["fluorocarbon"], Force.FromPoundsForce(pounds));

    private static Lure Of(string presentation, double ounces) => new(
        Planned.Trade.Presentations[presentation], Mass.FromOunces(ounces), Planned.Trade.LureMaterials[Planned.Trade.Presentations[presentation].Materials[0]]);

    private static string Told(FormattableString text) => text.ToString(new Plain());

    // Tests of Core know no units of a caller: a quantity as it is.
    private sealed class Plain : IFormatProvider, ICustomFormatter
    {
        public object? GetFormat(Type? formatType) => formatType == typeof(ICustomFormatter) ? this : null;

        public string Format(string? format, object? arg, IFormatProvider? formatProvider) => arg switch
        {
            Force force => string.Create(CultureInfo.InvariantCulture, $"{force.PoundsForce:0.#} lbf"),
            Mass mass => string.Create(CultureInfo.InvariantCulture, $"{mass.Ounces:0.###} oz"),
            _ => $"{arg}",
        };
    }
}
