namespace CrewBot.Chat.Trips;

/// <summary>Whom a trip speaks to, and whom one calls.</summary>
/// <param name="Room">Where the crew reads of trips; null where there is no such place.</param>
/// <param name="Contact">The channel of those who are told when a party is overdue; null for the crew's alone.</param>
/// <param name="Role">The role that is called when a party is overdue; null for none.</param>
/// <param name="Emergency">The emergency number as the crew set it; null when it did not.</param>
/// <param name="Addresses">The places of direct messages, by the number of their reader.</param>
public sealed record TripContacts(
    string? Room, string? Contact, string? Role, string? Emergency, IReadOnlyDictionary<long, string> Addresses)
{
    /// <summary>Where an overdue party is announced.</summary>
    public IEnumerable<string> AlertPlaces => new[] { Room, Contact }.OfType<string>().Distinct();

    /// <summary>What to do in danger.</summary>
    public string EmergencyLine => Emergency is null ? TripWords.Emergency : $"In danger: call {Emergency}. The bot calls nobody.";
}
