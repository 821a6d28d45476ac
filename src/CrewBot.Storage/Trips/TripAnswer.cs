namespace CrewBot.Storage.Trips;

/// <summary>Whether somebody comes.</summary>
public enum TripAnswer
{
    Out,
    Maybe,
    In,
}
