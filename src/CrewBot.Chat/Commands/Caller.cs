using CrewBot.Core.Knowledge;
using CrewBot.Storage.Boxes;
using CrewBot.Storage.Ice;

namespace CrewBot.Chat.Commands;

/// <summary>Who asks, and from where.</summary>
/// <param name="Crew">The crew; null in a direct message.</param>
/// <param name="Member">The person, by the platform's own id.</param>
/// <param name="Role">What they may do.</param>
/// <param name="Units">What units they speak in.</param>
/// <param name="Locale">Their language as a BCP 47 tag, such as <c>en-US</c>.</param>
public sealed record Caller(string? Crew, string Member, Role Role, CrewUnits Units, string Locale = "en-US")
{
    /// <summary>What the person is called; the platform's id while nobody said.</summary>
    public string Name { get; init; } = Member;

    /// <summary>What the crew is called; null while nobody knows. For people to read: nothing is found by it.</summary>
    public string? CrewName { get; init; }

    /// <summary>The crew was not named, and is the one of several that they wrote in last.</summary>
    public bool HasOtherCrews { get; init; }

    /// <summary>Where their clock stands.</summary>
    public TimeZoneInfo Zone { get; init; } = TimeZoneInfo.Utc;

    /// <summary>They sit at the computer that CrewBot runs on: a path they give is a file of this computer.</summary>
    public bool FilesAreHere { get; init; }

    /// <summary>What is in their box; read only to suggest what they may mean.</summary>
    public IReadOnlyList<Gear> Gear { get; init; } = [];

    /// <summary>Whom the crew will share reports of ice with; read only to suggest them.</summary>
    public IReadOnlyList<IcePartner> Partners { get; init; } = [];

    /// <summary>The waters of the crew, with what it has read of their rules.</summary>
    public IReadOnlyList<WaterRules> Waters { get; init; } = [];
}
