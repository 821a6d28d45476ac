using UnitsNet;

namespace CrewBot.Core.Ice;

/// <summary>What somebody thinks of putting on the ice.</summary>
/// <param name="Use">The step of the tables it falls under: the heaviest thing in it.</param>
/// <param name="Total">Everything within the spot: people, shelter, sleds, gear, vehicle.</param>
/// <param name="Stay">How long it stands at one spot; zero for what keeps moving.</param>
public sealed record IceLoad(IceUse Use, Mass Total, Duration Stay)
{
    /// <summary>No table or formula here is for anything that stands longer: common to the guides that were read.</summary>
    public static Duration LongestStay { get; } = Duration.FromHours(2);

    /// <summary>Whether it stands, camps or gathers.</summary>
    public bool Stands => Stay > Duration.Zero || Use == IceUse.Gathering;

    public bool StandsTooLong => Stay > LongestStay;

    /// <summary>Whether it is a car or a truck: by default, do not drive.</summary>
    public bool IsRoadVehicle => Use is IceUse.Car or IceUse.Pickup or IceUse.HeavyTruck;

    internal bool IsVehicle => IsRoadVehicle || Use is IceUse.Snowmobile or IceUse.SideBySide;
}
