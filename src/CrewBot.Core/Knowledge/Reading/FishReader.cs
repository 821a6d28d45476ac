namespace CrewBot.Core.Knowledge.Reading;

/// <summary>Reads records about fish, what they eat and where they may be fished for.</summary>
internal static class FishReader
{
    public static Species Species(FieldReader fields) => new()
    {
        Key = fields.Text("key"),
        Name = fields.Text("name"),
        Aliases = fields.OptionalList("aliases", ValueReader.Text) ?? [],
        Source = fields.Text("source"),
        Class = fields.Name<SizeClass>("class"),
        Weights = fields.BySize("weights", QuantityReader.Mass),
        Lengths = fields.BySize("lengths", QuantityReader.Length),
        StandardWeight = fields.OptionalInner("standardWeight", BiometricsReader.StandardWeight),
        LengthCategories = fields.OptionalInner("lengthCategories", BiometricsReader.LengthCategories),
        GirthDivisor = fields.Optional("girthDivisor", ValueReader.Number),
        BodyDepthShare = fields.Required("bodyDepthShare", ValueReader.Number),
        Teeth = fields.Name<Teeth>("teeth"),
        SoftMouth = fields.Flag("softMouth"),
        LineShyness = fields.Name<Shyness>("lineShyness"),
        Light = fields.Text("light"),
        Depth = fields.Inner("depth", Depth),
        Station = fields.Inner("station", Station),
        BarotraumaDepth = fields.Optional("barotraumaDepth", QuantityReader.Length),
        Hooks = fields.Spread("hooks", QuantityReader.Hook),
        Presentations = fields.ByMood("presentations", keys => FieldReader.ListOf(keys, ValueReader.Text)),
        Baits = fields.List("baits", ValueReader.Text),
    };

    public static Bait Bait(FieldReader fields) => new()
    {
        Key = fields.Text("key"),
        Name = fields.Text("name"),
        Aliases = fields.OptionalList("aliases", ValueReader.Text) ?? [],
        Source = fields.Text("source"),
        Kind = fields.Name<BaitKind>("kind"),
        Serves = fields.List("serves", ValueReader.Text),
        Hooking = fields.Text("hooking"),
    };

    public static WaterRules Water(FieldReader fields) => new()
    {
        Key = fields.Text("key"),
        Name = fields.Text("name"),
        Aliases = fields.OptionalList("aliases", ValueReader.Text) ?? [],
        Source = fields.Text("source"),
        Lines = fields.Optional("lines", ValueReader.Whole),
        HooksPerLine = fields.Optional("hooksPerLine", ValueReader.Whole),
        TreblesPerLine = fields.Optional("treblesPerLine", ValueReader.Whole),
        BarblessOnly = fields.Optional("barblessOnly", ValueReader.Flag),
        Baits = fields.OptionalList("baits", ValueReader.Name<BaitKind>),
        LeadBanned = fields.Optional("leadBanned", ValueReader.Flag),
    };

    private static DepthBand Depth(FieldReader fields) => new()
    {
        From = fields.Required("from", QuantityReader.Length),
        To = fields.Required("to", QuantityReader.Length),
        Usual = fields.Required("usual", QuantityReader.Length),
    };

    private static Station Station(FieldReader fields) => new()
    {
        Near = fields.Name<StationNear>("near"),
        Gap = fields.ByMood("gap", QuantityReader.Length),
    };
}
