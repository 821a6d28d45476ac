using CrewBot.Core.Knowledge;
using CrewBot.Storage.Crews;

namespace CrewBot.Chat.Commands;

/// <summary>What a crew has set, and one person in it.</summary>
/// <param name="Crew">The crew's settings.</param>
/// <param name="Member">The person; null when they have stored nothing.</param>
/// <param name="Waters">The crew's waters with their rules.</param>
internal sealed record CallerSettings(CrewSettings Crew, CrewMember? Member, IReadOnlyList<WaterRules> Waters)
{
    private readonly TimeZoneInfo? _zone = Crew.Zone is { } zone && TimeZoneInfo.TryFindSystemTimeZoneById(zone, out var found) ? found : null;

    /// <summary>A caller, who comes as the platform knows them, with all of it.</summary>
    public Caller Give(Caller caller) => caller with
    {
        CrewName = caller.CrewName ?? Crew.Name,
        Units = (Member?.Units ?? Crew.Units) is { } units
            ? units == UnitSystem.Metric ? CrewUnits.Metric : CrewUnits.Customary
            : caller.Units,
        Role = (Role)Math.Max((int)caller.Role, (int)(Member?.Role ?? CrewRole.Member)),
        Zone = _zone ?? caller.Zone,
        Waters = Waters,
    };
}
