namespace CrewBot.Storage.Ice;

/// <summary>A channel that is told of ice.</summary>
/// <param name="Channel">The platform's id of it.</param>
/// <param name="ShowsSpot">Whether its readers may see the exact spot.</param>
public sealed record IceChannel(string Channel, bool ShowsSpot)
{
    /// <summary>The key of the partner crew whose channel it is; null for one of the crew's own.</summary>
    public string? Partner { get; init; }

    /// <summary>
    /// Whether its readers may learn more of the place than they were told: not when the crews share no more, or share the spot
    /// no more.
    /// </summary>
    public bool MayLearnMore { get; init; } = true;
}
