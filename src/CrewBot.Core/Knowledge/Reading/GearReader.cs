namespace CrewBot.Core.Knowledge.Reading;

/// <summary>Reads what people bring on a trip, and what a trip needs.</summary>
internal static class GearReader
{
    public static GearKind Kind(FieldReader fields) => new()
    {
        Key = fields.Text("key"),
        Name = fields.Text("name"),
        Aliases = fields.OptionalList("aliases", ValueReader.Text) ?? [],
        Source = fields.Text("source"),
        Family = fields.Name<GearFamily>("family"),
        Mass = fields.Required("mass", QuantityReader.Mass),
        Seats = fields.Optional("seats", ValueReader.Whole),
        Footprint = fields.Optional("footprint", QuantityReader.Area),
        Setup = fields.Optional("setup", QuantityReader.Minutes),
        Heat = fields.Optional("heat", QuantityReader.Heat),
        Hole = fields.Optional("hole", QuantityReader.Length),
        IsPowered = fields.Flag("powered"),
        Carries = fields.Optional("carries", QuantityReader.Mass),
    };

    public static NeedRule Need(FieldReader fields) => new()
    {
        Key = fields.Text("key"),
        Name = fields.Text("name"),
        Aliases = fields.OptionalList("aliases", ValueReader.Text) ?? [],
        Source = fields.Text("source"),
        Family = fields.Name<GearFamily>("family"),
        Basis = fields.Name<NeedBasis>("basis"),
        Per = fields.Optional("per", ValueReader.Whole) ?? 1,
        IsSafety = fields.Flag("safety"),
        Why = fields.Text("why"),
    };
}
