namespace CrewBot.Discord.Wire;

/// <summary>The union of command, component and modal data: each kind fills its own fields.</summary>
internal sealed record InteractionData
{
    public Snowflake? Id { get; set; }
    public string? Name { get; set; }
    public CommandType? Type { get; set; }
    public IReadOnlyList<InteractionOption>? Options { get; set; }
    public ResolvedData? Resolved { get; set; }
    public Snowflake? TargetId { get; set; }
    public string? CustomId { get; set; }
    public ComponentType? ComponentType { get; set; }
    public IReadOnlyList<string>? Values { get; set; }
    public IReadOnlyList<SubmittedComponent>? Components { get; set; }
}
