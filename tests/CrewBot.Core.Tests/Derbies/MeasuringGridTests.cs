using System.Globalization;
using CrewBot.Core.Derbies;
using CrewBot.Core.Fish;
using UnitsNet.Units;

namespace CrewBot.Core.Tests.Derbies;

public sealed class MeasuringGridTests
{
    public static TheoryData<string, string, string, string, string> Examples =>
    [
        .. HandbookPage.Rows("measured |")
            .Select(row => new TheoryDataRow<string, string, string, string, string>(row[0], row[1], row[2], row[3], row[4])),
    ];

    [Theory]
    [MemberData(nameof(Examples))]
    public void Score_HandbooksExample_GivesItsLength(string measured, string step, string rounding, string penalty, string scored)
    {
        var grid = new MeasuringGrid(Length(step), Enum.Parse<Rounding>(rounding, ignoreCase: true));

        Assert.Equal(Length(scored).Nanometres, grid.Score(Length(measured), Length(penalty).Nanometres).Nanometres);
    }

    // Whole and quarter inches that binary fractions score a quarter too short, computed beforehand.
    [Theory]
    [InlineData(6)]
    [InlineData(7.25)]
    [InlineData(12)]
    [InlineData(13.25)]
    [InlineData(25.25)]
    [InlineData(31.5)]
    [InlineData(48)]
    public void Score_LengthOnALine_KeepsIt(double inches)
    {
        var measured = ExactLength.From((decimal)inches, LengthUnit.Inch);

        Assert.Equal((decimal)inches, new MeasuringGrid(ExactLength.From(0.25m, LengthUnit.Inch)).Score(measured).Number);
    }

    [Fact]
    public void Score_PenaltyAboveTheLength_IsZero() =>
        Assert.Equal(0, new MeasuringGrid(Length("0.5 cm")).Score(Length("10 cm"), Length("12 cm").Nanometres).Nanometres);

    private static ExactLength Length(string text)
    {
        var parts = text.Split(' ');
        var unit = parts[1] switch { "mm" => LengthUnit.Millimeter, "cm" => LengthUnit.Centimeter, _ => LengthUnit.Inch };
        return ExactLength.From(decimal.Parse(parts[0], CultureInfo.InvariantCulture), unit);
    }
}
