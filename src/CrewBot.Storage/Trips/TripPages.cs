namespace CrewBot.Storage.Trips;

/// <summary>What is kept of a trip as one text.</summary>
internal sealed record TripPages(string? Place, string? Species, string? Note, TripRoster Roster)
{
    public string? Room { get; init; }

    public long? DepthNanometres { get; init; }

    /// <summary>The unit that the depth was given in; trips of earlier versions have none.</summary>
    public string? DepthUnit { get; init; }
}
