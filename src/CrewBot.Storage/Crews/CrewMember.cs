namespace CrewBot.Storage.Crews;

/// <summary>A person of a crew.</summary>
/// <param name="Id">Their number.</param>
/// <param name="Name">What they are called.</param>
/// <param name="Role">What they may do.</param>
/// <param name="Units">The units they speak in; null for the crew's.</param>
public sealed record CrewMember(long Id, string Name, CrewRole Role, UnitSystem? Units)
{
    /// <summary>The platform's id; null for one who was erased.</summary>
    public string? PlatformId { get; init; }
}
