using CrewBot.Core.Knowledge;
using CrewBot.Core.Trips;

namespace CrewBot.Core.Tests.Trips;

// Worked by hand. The counts a group needs are common practice; a CO alarm in every heated shelter is Minnesota DNR advice.
public sealed class TripNeedsTests
{
    [Theory]
    [InlineData("picks", 14, 14)]
    [InlineData("throw-rope", 14, 2)]
    [InlineData("throw-rope", 8, 1)]
    [InlineData("throw-rope", 9, 2)]
    [InlineData("first-aid", 1, 1)]
    [InlineData("spud-bar", 0, 0)]
    [InlineData("auger", 14, 4)]
    [InlineData("auger", 12, 3)]
    [InlineData("seats", 14, 14)]
    [InlineData("drive", 14, 14)]
    public void Of_PeopleAlone_AsksForThatMany(string rule, int people, int needed) =>
        Assert.Equal(needed, NeedOf(rule, people).Missing);

    [Fact]
    public void Of_ThreeHeatersAndTwoAlarms_LacksOneAlarm() =>
        Assert.Equal(1, NeedOf("co-alarm", 6, Some("small-heater", 2), Some("large-heater"), Some("co-alarm", 2)).Missing);

    // 17 + 4 + 12 = 33 kg fit on a small sled of 45 kg; a cabin of 140 kg more makes 173 kg, 128 kg over: two sleds of 120 kg.
    [Fact]
    public void Of_LoadBeyondTheSleds_LacksAsManySledsAsTheRestFills()
    {
        BroughtGear[] light = [Some("hub-4"), Some("small-heater"), Some("power-auger"), Some("small-sled")];

        Assert.True(NeedOf("sled", 4, light).IsMet);
        Assert.Equal(2, NeedOf("sled", 4, [.. light, Some("cabin")]).Missing);
    }

    // 4 + 6 + 3 seats for 14 people: one short.
    [Fact]
    public void Of_Seats_AreAddedUpOneByOne()
    {
        var need = NeedOf("seats", 14, Some("hub-4"), Some("hub-6"), Some("hub-3"));

        Assert.Equal(1, need.Missing);
        Assert.Equal("14 people; seats 4 + 6 + 3 = 13", FormattableString.Invariant(need.Working));
    }

    [Fact]
    public void Of_EverythingForTwo_LacksNothing() => Assert.All(
        TripNeeds.Of(
            2, [Some("hub-4"), Some("ice-picks", 2), Some("throw-rope"), Some("spud-bar"), Some("first-aid-kit"), Some("hand-auger"), Some("car"), Some("hauling-sled")],
            TradeKnowledge.BuiltIn.Needs),
        need => Assert.True(need.IsMet, need.Rule.Key));

    [Fact]
    public void Needs_SafetyKit_CanBeWaivedByNobody() => Assert.Equal(
        ["picks", "throw-rope", "spud-bar", "first-aid", "co-alarm"],
        TradeKnowledge.BuiltIn.Needs.Where(need => need.IsSafety).Select(need => need.Key));

    // Six people at 100 kg, a cabin of 140 kg and a sled of 11 kg; the car stays ashore.
    [Fact]
    public void GatheredLoad_LeavesVehiclesAshore() =>
        Assert.Equal(751, GatheredLoad.Of(6, [Some("cabin"), Some("hauling-sled"), Some("car")]).Total.Kilograms, tolerance: 1e-9);

    private static BroughtGear Some(string kind, int count = 1) => BroughtGear.Of(TradeKnowledge.BuiltIn.Gear[kind], count);

    private static Need NeedOf(string rule, int people, params BroughtGear[] brought) =>
        TripNeeds.Of(people, brought, TradeKnowledge.BuiltIn.Needs).Single(need => need.Rule.Key == rule);
}
