using UnitsNet;

namespace CrewBot.Core.Knowledge.Reading;

/// <summary>Reads what is published about the weights and lengths of a species.</summary>
internal static class BiometricsReader
{
    public static StandardWeightEquation StandardWeight(FieldReader fields) => new()
    {
        Intercept = fields.Required("intercept", ValueReader.Number),
        Slope = fields.Required("slope", ValueReader.Number),
        MinimumLength = fields.Required("minimumLength", QuantityReader.Length),
        Source = fields.Text("source"),
    };

    public static LengthCategoryTables LengthCategories(FieldReader fields) => new()
    {
        Metric = fields.Inner("metric", Bounds),
        Inch = fields.Inner("inch", Bounds),
        Source = fields.Text("source"),
    };

    private static LengthBounds Bounds(FieldReader fields) => new()
    {
        Stock = Bound(fields, "stock"),
        Quality = Bound(fields, "quality"),
        Preferred = Bound(fields, "preferred"),
        Memorable = Bound(fields, "memorable"),
        Trophy = Bound(fields, "trophy"),
    };

    private static Length Bound(FieldReader fields, string category) => fields.Required(category, QuantityReader.Length);
}
