using System.Globalization;
using CrewBot.Core.Fish;
using CrewBot.Core.Knowledge;
using CrewBot.Core.Tests.Published;
using UnitsNet;

namespace CrewBot.Core.Tests.Fish;

/// <summary>Equations and category tables as published, for species that the knowledge has and for others.</summary>
internal static class PublishedSpecies
{
    public static StandardWeightEquation Equation(string species) => new()
    {
        Intercept = Row("standard_weight_intercept", species).Value,
        Slope = Row("standard_weight_slope", species).Value,
        MinimumLength = Length.FromMillimeters(Row("standard_weight_min_length", species).Value),
        Source = Row("standard_weight_slope", species).Source,
    };

    public static LengthCategoryTables Categories(string species) => new()
    {
        Metric = Bounds(Row("length_bounds_metric", species), bound => Length.FromCentimeters(bound)),
        Inch = Bounds(Row("length_bounds_inch", species), bound => Length.FromInches(bound)),
        Source = Row("length_bounds_inch", species).Source,
    };

    /// <summary>What the table says of a species that may also be in the knowledge.</summary>
    public static PublishedRow? Find(string quantity, string species) =>
        PublishedTable.Rows.SingleOrDefault(row => row.Quantity == quantity && row.Inputs["species"] == species);

    public static double[] Numbers(PublishedRow row) =>
        [.. row.Expected.Split('|').Select(number => double.Parse(number, CultureInfo.InvariantCulture))];

    public static double[] Millimetres(LengthBounds bounds) =>
        [.. Enum.GetValues<LengthCategory>().Select(category => Math.Round(bounds[category].Millimeters, 6))];

    private static PublishedRow Row(string quantity, string species) =>
        Find(quantity, species) ?? throw new InvalidOperationException($"No {quantity} for {species}.");

    private static LengthBounds Bounds(PublishedRow row, Func<double, Length> of)
    {
        var numbers = Numbers(row);
        return new LengthBounds
        {
            Stock = of(numbers[0]),
            Quality = of(numbers[1]),
            Preferred = of(numbers[2]),
            Memorable = of(numbers[3]),
            Trophy = of(numbers[4]),
        };
    }
}
