namespace CrewBot.Storage.Trips;

/// <summary>A person of the crew with whoever they bring along.</summary>
/// <param name="MemberId">The person.</param>
/// <param name="Answer">Whether they come.</param>
/// <param name="People">How many they are, themselves and the children among them.</param>
/// <param name="Children">How many of those are children, whom they look after.</param>
public sealed record TripParty(long MemberId, TripAnswer Answer, int People, int Children)
{
    /// <summary>Smokes in the shelter.</summary>
    public bool Smokes { get; init; }

    /// <summary>Asks for a shelter where nobody smokes.</summary>
    public bool AsksSmokeFree { get; init; }

    /// <summary>When they went onto the ice; null while they have not.</summary>
    public DateTimeOffset? OutAt { get; init; }

    /// <summary>When they mean to be back; the trip's time unless they said another.</summary>
    public DateTimeOffset? DueBack { get; init; }

    /// <summary>Where on the water they said they would be; null when they did not.</summary>
    public string? Spot { get; init; }

    /// <summary>When they said that they are back.</summary>
    public DateTimeOffset? BackAt { get; init; }

    /// <summary>Are they on the ice?</summary>
    public bool IsOnTheIce => OutAt is not null && BackAt is null;
}
