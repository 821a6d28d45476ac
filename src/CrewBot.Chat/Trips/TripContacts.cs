using CrewBot.Chat.Commands;
using CrewBot.Chat.Quantities;
using CrewBot.Storage.Crews;

namespace CrewBot.Chat.Trips;

/// <summary>Whom a trip speaks to, and whom one calls.</summary>
/// <param name="Room">Where the crew reads of trips; null where there is no such place.</param>
/// <param name="Contact">The channel of those who are told when a party is overdue; null for the crew's alone.</param>
/// <param name="Crew">What the crew has set.</param>
/// <param name="Members">The crew's people, by number.</param>
public sealed record TripContacts(string? Room, string? Contact, CrewSettings Crew, IReadOnlyDictionary<long, CrewMember> Members)
{
    /// <summary>Where an overdue party is announced.</summary>
    public IEnumerable<string> AlertPlaces => new[] { Room, Contact }.OfType<string>().Distinct();

    /// <summary>The number to call, as the crew set it.</summary>
    public string EmergencyNumber => Crew.Emergency ?? "the local emergency number";

    /// <summary>What to do in danger.</summary>
    public string EmergencyLine => $"In danger: call {EmergencyNumber}. The bot calls nobody.";

    /// <summary>How quantities are written for somebody: as they set it, or the crew did, or else as whoever asks reads them.</summary>
    public Showing ShowingFor(long? member, CrewUnits otherwise) =>
        Showing.In(((member is { } number ? Members.GetValueOrDefault(number)?.Units : null) ?? Crew.Units) switch
        {
            UnitSystem.Metric => CrewUnits.Metric,
            UnitSystem.Customary => CrewUnits.Customary,
            _ => otherwise,
        });
}
