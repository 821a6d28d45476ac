using CrewBot.Core.Rigs;
using CrewBot.Core.Tests.Published;
using CsCheck;
using UnitsNet;

namespace CrewBot.Core.Tests.Rigs;

public sealed class RigGeometryTests
{

    // Shares of the bait's length, common practice.
    [Theory]
    [PublishedRows("hook_spacing_for_bait")]
    public void SpacingFor_BaitInTable_SpansTheTablesRange(PublishedRow row)
    {
        var spacing = TwoTrebleRig.SpacingFor(Length.FromInches(row["bait_inch"]));

        Assert.Equal(row.Ends[0], spacing.Least.Inches, 1e-9);
        Assert.Equal(row.Ends[1], spacing.Most.Inches, 1e-9);
    }

    [Theory]
    [PublishedRows("quick_strike_hook_spacing")]
    public void SpacingFor_AnyBaitThatSuits_MeetsTheUsualSpacing(PublishedRow row) =>
        Gen.Double[1, 25].Sample(inches =>
        {
            var bait = Length.FromInches(inches);
            if (!TwoTrebleRig.Suits(bait))
            {
                Assert.Throws<ArgumentOutOfRangeException>("bait", () => TwoTrebleRig.SpacingFor(bait));
                return;
            }

            var spacing = TwoTrebleRig.SpacingFor(bait);
            Assert.True(spacing.Most.Inches >= row.Ends[0] && spacing.Least.Inches <= row.Ends[1]);
        });
}
