using CrewBot.Core.Lines;

namespace CrewBot.Core.Knowledge.Reading;

/// <summary>Reads lines, the outfits that carry them, and the knots tied in them.</summary>
internal static class LineReader
{
    public static LineMaterial Line(FieldReader fields) => new()
    {
        Key = fields.Text("key"),
        Name = fields.Text("name"),
        Aliases = fields.OptionalList("aliases", ValueReader.Text) ?? [],
        Source = fields.Text("source"),
        Use = fields.Name<LineUse>("use"),
        Density = fields.Required("density", QuantityReader.Density),
        Modulus = fields.Spread("modulus", QuantityReader.Modulus),
        SolidFraction = fields.Required("solidFraction", ValueReader.Number),
        Sizes = fields.List("sizes", size => FieldReader.ObjectOf(size, Size)),
        OverLabel = fields.Spread("overLabel", ValueReader.Number),
        WaterUptakePercent = fields.Spread("waterUptakePercent", ValueReader.Number),
        RefractiveIndex = fields.Optional("refractiveIndex", ValueReader.Number),
        LifeSeasons = fields.Spread("lifeSeasons", ValueReader.Number),
        PricePer100Metres = fields.Spread("pricePer100Metres", ValueReader.Number),
        InFrost = fields.Text("inFrost"),
    };

    public static Outfit Outfit(FieldReader fields) => new()
    {
        Key = fields.Text("key"),
        Name = fields.Text("name"),
        Aliases = fields.OptionalList("aliases", ValueReader.Text) ?? [],
        Source = fields.Text("source"),
        Rod = fields.Text("rod"),
        Braid = fields.Required("braid", QuantityReader.Test),
        Leader = fields.Required("leader", QuantityReader.Test),
        SingleStrand = fields.Required("singleStrand", QuantityReader.Test),
        Wire = fields.Required("wire", QuantityReader.Test),
    };

    public static Knot Knot(FieldReader fields) => new()
    {
        Key = fields.Text("key"),
        Name = fields.Text("name"),
        Aliases = fields.OptionalList("aliases", ValueReader.Text) ?? [],
        Source = fields.Text("source"),
        Kind = fields.Name<KnotKind>("kind"),
        Efficiency = fields.Entries("efficiency", (line, _) => line, share => FieldReader.ObjectOf(share, Share)),
        ColdHands = fields.Required("coldHands", ValueReader.Whole),
        Note = fields.Text("note"),
    };

    private static LineSize Size(FieldReader fields) => new(
        fields.Required("test", QuantityReader.Test),
        fields.Required("diameter", QuantityReader.Length));

    private static Spread<double> Share(FieldReader fields) => new()
    {
        Low = fields.Required("low", ValueReader.Number),
        High = fields.Required("high", ValueReader.Number),
    };
}
