namespace CrewBot.Discord.Wire;

/// <summary>The union of command, component and modal data: each kind fills its own fields.</summary>
internal sealed record InteractionData
{
    public Snowflake? Id { get; init; }
    public string? Name { get; init; }
    public CommandType? Type { get; init; }
    public IReadOnlyList<InteractionOption>? Options { get; init; }
    public ResolvedData? Resolved { get; init; }
    public Snowflake? TargetId { get; init; }
    public string? CustomId { get; init; }
    public ComponentType? ComponentType { get; init; }
    public IReadOnlyList<string>? Values { get; init; }
    public IReadOnlyList<SubmittedComponent>? Components { get; init; }
}
