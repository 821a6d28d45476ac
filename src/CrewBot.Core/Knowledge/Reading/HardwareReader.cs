namespace CrewBot.Core.Knowledge.Reading;

/// <summary>Reads small metal, hooks, shot, and the signs of a break-off.</summary>
internal static class HardwareReader
{
    public static Hardware Piece(FieldReader fields) => new()
    {
        Key = fields.Text("key"),
        Name = fields.Text("name"),
        Aliases = fields.OptionalList("aliases", ValueReader.Text) ?? [],
        Source = fields.Text("source"),
        Kind = fields.Name<HardwareKind>("kind"),
        Size = fields.Text("size"),
        Rated = fields.Required("rated", QuantityReader.Test),
    };

    public static HookRating Hook(FieldReader fields) => new()
    {
        Key = fields.Text("key"),
        Name = fields.Text("name"),
        Aliases = fields.OptionalList("aliases", ValueReader.Text) ?? [],
        Source = fields.Text("source"),
        Size = fields.Required("size", QuantityReader.Hook),
        Opens = fields.Spread("opens", QuantityReader.Test),
    };

    public static SplitShot Shot(FieldReader fields) => new()
    {
        Key = fields.Text("key"),
        Name = fields.Text("name"),
        Aliases = fields.OptionalList("aliases", ValueReader.Text) ?? [],
        Source = fields.Text("source"),
        Scale = fields.Name<ShotScale>("scale"),
        Size = fields.Text("size"),
        Mass = fields.Required("mass", QuantityReader.Mass),
    };

    public static BreakSign Sign(FieldReader fields) => new()
    {
        Key = fields.Text("key"),
        Name = fields.Text("name"),
        Aliases = fields.OptionalList("aliases", ValueReader.Text) ?? [],
        Source = fields.Text("source"),
        Place = fields.Name<BreakPlace>("place"),
        Look = fields.Name<BreakLook>("look"),
        Cause = fields.Text("cause"),
        Fix = fields.Text("fix"),
    };
}
