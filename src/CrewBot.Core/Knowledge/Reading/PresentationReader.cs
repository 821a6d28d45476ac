namespace CrewBot.Core.Knowledge.Reading;

/// <summary>Reads presentations and what their weights are made of.</summary>
internal static class PresentationReader
{
    public static Presentation Presentation(FieldReader fields) => new()
    {
        Key = fields.Text("key"),
        Name = fields.Text("name"),
        Aliases = fields.OptionalList("aliases", ValueReader.Text) ?? [],
        Source = fields.Text("source"),
        Step = fields.Optional("step", ValueReader.Whole),
        SetLine = fields.Flag("setLine"),
        Work = fields.Entries("work", ValueReader.NameOf<Mood>, ValueReader.Text),
        Bite = fields.Text("bite"),
        OffBottom = fields.OptionalByMood("offBottom", QuantityReader.Length),
        TwistsLine = fields.Flag("twistsLine"),
        Loudness = fields.Required("loudness", ValueReader.Whole),
        Calls = fields.Text("calls"),
        Hooks = fields.Required("hooks", ValueReader.Whole),
        Trebles = fields.Required("trebles", ValueReader.Whole),
        Sizes = fields.List("sizes", size => FieldReader.ObjectOf(size, Step)),
        StartWeight = fields.Entries("startWeight", ValueReader.NameOf<SizeClass>, QuantityReader.Mass),
        Outfits = fields.Entries("outfits", ValueReader.NameOf<SizeClass>, ValueReader.Text),
        Materials = fields.List("materials", ValueReader.Text),
        BodyDensity = fields.Optional("bodyDensity", QuantityReader.Density),
        Fall = fields.Spread("fall", ValueReader.Number),
        Body = fields.Text("body"),
        Knot = fields.Text("knot"),
        Snap = fields.Flag("snap"),
    };

    public static LureMaterial Material(FieldReader fields) => new()
    {
        Key = fields.Text("key"),
        Name = fields.Text("name"),
        Aliases = fields.OptionalList("aliases", ValueReader.Text) ?? [],
        Source = fields.Text("source"),
        Density = fields.Required("density", QuantityReader.Density),
        Lead = fields.Flag("lead"),
    };

    private static LureStep Step(FieldReader fields) => new()
    {
        Weight = fields.Required("weight", QuantityReader.Mass),
        Length = fields.Required("length", QuantityReader.Length),
        Hook = fields.Optional("hook", QuantityReader.Hook),
    };
}
