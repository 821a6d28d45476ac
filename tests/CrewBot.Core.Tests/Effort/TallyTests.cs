using System.Globalization;
using CrewBot.Core.Effort;
using CrewBot.Core.Tests.Published;
using UnitsNet;

namespace CrewBot.Core.Tests.Effort;

public sealed class TallyTests
{
    [Theory]
    [PublishedRows("catch_rate")]
    public void Rate_FishAndLineHours_AgreesWithTable(PublishedRow row) =>
        row.Check(Hours((int)row["fish"], row["effort_line_hour"]).Rate!.Value.PerLineHour);

    [Theory]
    [PublishedRows("ratio_of_means")]
    public void Total_CompletedSpells_GivesTheRatioOfMeans(PublishedRow row)
    {
        var spells = row.Inputs["trips"].Split('|').Select(trip => trip.Split(':')).Select(trip => Hours(
            int.Parse(trip[0], CultureInfo.InvariantCulture), double.Parse(trip[1], CultureInfo.InvariantCulture)));

        row.Check(Tally.Total(spells).Rate!.Value.PerLineHour);
    }

    [Fact]
    public void Rate_NothingCaught_IsZero() => Assert.Equal(0, Hours(0, 12).Rate!.Value.PerLineHour);

    [Fact]
    public void Rate_NoLineDown_IsUnknown()
    {
        Assert.Null(Hours(2, 0).Rate);
        Assert.Null(Tally.Total([]).Rate);
    }

    [Fact]
    public void Tally_OutsideItsRange_Throws()
    {
        Assert.Throws<ArgumentOutOfRangeException>("fish", () => Hours(-1, 1));
        Assert.Throws<ArgumentOutOfRangeException>("lineTime", () => Hours(1, -1));
        Assert.Throws<ArgumentOutOfRangeException>("perLineHour", () => new CatchRate(-0.1));
    }

    private static Tally Hours(int fish, double hours) => new(fish, Duration.FromHours(hours));
}
