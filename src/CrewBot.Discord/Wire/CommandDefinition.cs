namespace CrewBot.Discord.Wire;

/// <summary>A command as registered, and as read back (then with an id, on most servers).</summary>
internal sealed record CommandDefinition
{
    public Snowflake? Id { get; init; }
    public required string Name { get; init; }
    public CommandType? Type { get; init; }
    public string? Description { get; init; }
    public IReadOnlyDictionary<string, string>? DescriptionLocalizations { get; init; }
    public IReadOnlyList<CommandOptionDefinition>? Options { get; init; }
    public string? DefaultMemberPermissions { get; init; }
    public IReadOnlyList<InteractionContext>? Contexts { get; init; }
    public IReadOnlyList<int>? IntegrationTypes { get; init; }
}
