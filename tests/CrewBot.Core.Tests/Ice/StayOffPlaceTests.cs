using CrewBot.Core.Ice;

namespace CrewBot.Core.Tests.Ice;

public sealed class StayOffPlaceTests
{
    [Theory]
    [InlineData("Loon Basin", "the narrows", "narrows")]
    [InlineData("Loon Basin", "Creek mouth", "creek")]
    [InlineData("Loon Basin", "south inlet", "inlet")]
    [InlineData("Alder River", "landing", "river")]
    [InlineData("Tamarack Reservoir", null, "reservoir")]
    [InlineData("Loon Basin", "pressure-ridge", "ridge")]
    [InlineData("Spring Lake", "landing", null)]
    [InlineData("Loon Basin", "riverside landing", null)]
    [InlineData("Loon Basin", null, null)]
    public void In_Name_FindsTheWordThatRulesANumberOut(string water, string? spot, string? word) =>
        Assert.Equal(word, StayOffPlace.In(water, spot));

    [Theory]
    [InlineData("off the North Landing", "north landing", true)]
    [InlineData("north landing", "south landing", false)]
    [InlineData("the", "off", false)]
    public void AreSame_SmallWords_DoNotTell(string one, string other, bool same) => Assert.Equal(same, SpotName.AreSame(one, other));

    [Theory]
    [InlineData("landing", "north landing", true)]
    [InlineData("north bay", "south bay", false)]
    public void MayBeSame_ShorterName_MayMeanTheLonger(string one, string other, bool may) => Assert.Equal(may, SpotName.MayBeSame(one, other));

    [Theory]
    [InlineData("2026-01-10T09:00-06:00", "2025-07-01T00:00-06:00")]
    [InlineData("2026-07-01T00:00-06:00", "2026-07-01T00:00-06:00")]
    public void Season_AnyInstant_StartsInJuly(string instant, string start) => Assert.Equal(
        DateTimeOffset.Parse(start, System.Globalization.CultureInfo.InvariantCulture),
        IceSeason.StartOf(DateTimeOffset.Parse(instant, System.Globalization.CultureInfo.InvariantCulture)));
}
