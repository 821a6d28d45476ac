namespace CrewBot.Discord.Rest;

/// <summary>A call with what it carries and how long its caller can wait.</summary>
internal sealed record RestRequest(Route Route)
{
    public static readonly TimeSpan UsualPatience = TimeSpan.FromSeconds(30);

    /// <summary>The JSON body, or empty for none.</summary>
    public ReadOnlyMemory<byte> Json { get; init; }

    public IReadOnlyList<Upload> Files { get; init; } = [];

    /// <summary>From the first attempt to the last, waiting for rate limits included.</summary>
    public TimeSpan Patience { get; init; } = UsualPatience;

    public override string ToString() => Route.ToString();
}
