using CrewBot.Core.Effort;
using CrewBot.Core.Knowledge;

namespace CrewBot.Core.Tests.Effort;

public sealed class CrewExperienceTests
{
    private static readonly Species Walleye = TradeKnowledge.BuiltIn.Species["walleye"];

    // What the trade shows neutral walleye, in its order.
    private static readonly IReadOnlyList<string> Shown = Walleye.Presentations[Mood.Neutral];

    private readonly List<FishedSpell> _spells = [];
    private readonly List<CaughtFish> _fish = [];

    [Fact]
    public void Order_ThreeLuckyFish_DoNotOutrankASeason()
    {
        Fish(Shown[0], hours: 40, fish: 24);
        Fish(Shown[1], hours: 1, fish: 3);

        Assert.Equal(Shown, Of()!.Order(Shown));
    }

    [Fact]
    public void Order_ASeasonThatGaveTwiceAsMuch_GoesFirst()
    {
        Fish(Shown[0], hours: 60, fish: 15);
        Fish(Shown[2], hours: 60, fish: 40);

        Assert.Equal([Shown[2], .. Shown.Where(way => way != Shown[2])], Of()!.Order(Shown));
    }

    [Fact]
    public void Told_HoursOfThisMonth_NamesItsMonthAndHours()
    {
        Fish(Shown[0], hours: 31, fish: 43);

        Assert.Equal("1.4 a line-hour on this in January, from 31 hours", Of()!.Told(Shown[0]));
        Assert.Null(Of()!.Told(Shown[1]));
    }

    [Fact]
    public void Of_AMonthWithFewHours_SpeaksFromTheWholeLog()
    {
        Fish(Shown[0], hours: 10, fish: 5);
        Fish(Shown[0], hours: 30, fish: 15, month: 2);

        Assert.Equal("0.50 a line-hour on this, from 40 hours", Of()!.Told(Shown[0]));
        Assert.Equal("0.50 a line-hour on this in February, from 30 hours", Of(month: 2)!.Told(Shown[0]));
    }

    [Fact]
    public void Of_HoursInAnotherMood_SaysNothing()
    {
        Fish(Shown[0], hours: 40, fish: 24, mood: Mood.Positive);

        Assert.Null(Of());
        Assert.NotNull(CrewExperience.Of(_spells, _fish, Walleye, Mood.Positive, 1, TradeKnowledge.BuiltIn));
    }

    private CrewExperience? Of(int month = 1) => CrewExperience.Of(_spells, _fish, Walleye, Mood.Neutral, month, TradeKnowledge.BuiltIn);

    // One line an hour at a time, its fish at the half hour.
    private void Fish(string way, int hours, int fish, int month = 1, Mood? mood = null)
    {
        for (var hour = 0; hour < hours; hour++)
        {
            var down = new DateTimeOffset(2027, month, 1, 0, 0, 0, TimeSpan.Zero).AddHours(hour);
            var angler = _spells.Count + 1;
            _spells.Add(new FishedSpell { Angler = angler, Lines = 1, Down = down, Up = down.AddHours(1), Presentation = way, Mood = mood });
            var caught = (fish * (hour + 1) / hours) - (fish * hour / hours);
            _fish.AddRange(Enumerable.Repeat(new CaughtFish(angler, Walleye.Key, way, down.AddMinutes(30)), caught));
        }
    }
}
