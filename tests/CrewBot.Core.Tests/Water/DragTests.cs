using CrewBot.Core.Tests.Published;
using CrewBot.Core.Water;

namespace CrewBot.Core.Tests.Water;

public sealed class DragTests
{
    [Theory]
    [PublishedRows("cd_sphere_clift_gauvin", "cd_sphere_measured")]
    public void SphereCoefficientAt_ReynoldsInTable_AgreesWithTable(PublishedRow row) =>
        row.Check(SphereDrag.CoefficientAt(row["Re"]));

    // Other fits to the same measurements. Brown and Lawler's stays within 1 % in the range of jigs; Schiller and
    // Naumann's, older and meant for Re below about 800, within 3 %.
    [Theory]
    [PublishedRows("cd_sphere_brown_lawler", "cd_sphere_schiller_naumann")]
    public void SphereCoefficientAt_ReynoldsInTable_AgreesWithOtherFits(PublishedRow row) =>
        row.Check(SphereDrag.CoefficientAt(row["Re"]), 0.03 * row.Value);

    [Theory]
    [PublishedRows("cd_cylinder_cheng")]
    public void CylinderCoefficientAt_ReynoldsInTable_AgreesWithCheng(PublishedRow row) =>
        row.Check(CylinderDrag.CoefficientAt(row["Re"]));

    // White's fit runs 10–14 % above Cheng's over most of the range of fishing line.
    [Theory]
    [PublishedRows("cd_cylinder_white")]
    public void CylinderCoefficientAt_ReynoldsInTable_StaysNearWhite(PublishedRow row) =>
        row.Check(CylinderDrag.CoefficientAt(row["Re"]), 0.15 * row.Value);

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    [InlineData(2.0001e5)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void CoefficientAt_OutsideTheSourcesRange_Throws(double reynolds)
    {
        Assert.Throws<ArgumentOutOfRangeException>(nameof(reynolds), () => SphereDrag.CoefficientAt(reynolds));
        Assert.Throws<ArgumentOutOfRangeException>(nameof(reynolds), () => CylinderDrag.CoefficientAt(reynolds));
    }
}
