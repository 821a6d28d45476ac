using CrewBot.Core.Derbies;

namespace CrewBot.Storage.Derbies;

/// <summary>A derby as it was set up.</summary>
public sealed record Derby
{
    /// <summary>Its number within the crew; 0 before it is stored.</summary>
    public long Number { get; init; }

    public required string Name { get; init; }

    /// <summary>Number of the member who set it up.</summary>
    public required long CreatedBy { get; init; }

    /// <summary>The channel or thread it was set up in; null where nothing can be posted.</summary>
    public string? Place { get; init; }

    /// <summary>The zone whose clock its times are told by, by its name in the IANA database.</summary>
    public required string Zone { get; init; }

    public required DerbySettings Settings { get; init; }

    public bool IsClosed { get; init; }

    /// <summary>Whether the member who was asked about takes part.</summary>
    public bool HasJoined { get; init; }
}
