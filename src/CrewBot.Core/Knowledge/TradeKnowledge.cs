namespace CrewBot.Core.Knowledge;

/// <summary>What the trade knows: every record, built in or laid over by a crew, checked as a whole.</summary>
public sealed class TradeKnowledge
{
    private static readonly Lazy<TradeKnowledge> BuiltInOnce = new(ReadBuiltIn);

    /// <summary>The records that come with CrewBot.</summary>
    public static TradeKnowledge BuiltIn => BuiltInOnce.Value;

    public required RecordSet<Species> Species { get; init; }

    public required RecordSet<Presentation> Presentations { get; init; }

    public required RecordSet<Bait> Baits { get; init; }

    /// <summary>Rods with their lines, lightest first.</summary>
    public required RecordSet<Outfit> Outfits { get; init; }

    public required RecordSet<LineMaterial> Lines { get; init; }

    public required RecordSet<LureMaterial> LureMaterials { get; init; }

    public required RecordSet<Knot> Knots { get; init; }

    public required RecordSet<Hardware> Hardware { get; init; }

    /// <summary>Hooks, smallest first.</summary>
    public required RecordSet<HookRating> Hooks { get; init; }

    public required RecordSet<SplitShot> SplitShot { get; init; }

    public required RecordSet<BreakSign> BreakSigns { get; init; }

    /// <summary>What people bring on a trip.</summary>
    public required RecordSet<GearKind> Gear { get; init; }

    /// <summary>What a trip needs, most urgent first.</summary>
    public required RecordSet<NeedRule> Needs { get; init; }

    /// <summary>The waters whose rules a crew has filled in.</summary>
    public required RecordSet<WaterRules> Waters { get; init; }

    private static TradeKnowledge ReadBuiltIn()
    {
        var reading = KnowledgeReader.Read();
        return reading.Knowledge
            ?? throw new InvalidDataException(string.Join('\n', reading.Faults));
    }
}
