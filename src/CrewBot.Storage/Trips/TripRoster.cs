namespace CrewBot.Storage.Trips;

/// <summary>Who comes on a trip with what, and what they were told.</summary>
public sealed record TripRoster
{
    public IReadOnlyList<TripParty> Parties { get; init; } = [];

    public IReadOnlyList<TripItem> Items { get; init; } = [];

    public IReadOnlyList<TripWaiver> Waivers { get; init; } = [];

    public IReadOnlyList<TripWish> Wishes { get; init; } = [];

    /// <summary>The shelter that each person was told, by the keys that seating gives them.</summary>
    public IReadOnlyDictionary<string, string> Seats { get; init; } = new Dictionary<string, string>();
}
