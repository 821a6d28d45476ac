using CrewBot.Chat.Commands;
using UnitsNet;

namespace CrewBot.Chat.Trips;

/// <summary>The numbers that trip replies hold.</summary>
public static class TripFigures
{
    public static readonly FigureKey<double> People = new("trip.people", "", "people who come", x => x);
    public static readonly FigureKey<double> Shelters = new("trip.shelters", "", "shelters that are hauled", x => x);
    public static readonly FigureKey<double> Unmet = new("trip.wishes-unmet", "", "seating wishes that are not met", x => x);
    public static readonly FigureKey<double> Moved = new("trip.moved", "", "people who sit elsewhere than they were told", x => x);
    public static readonly FigureKey<Mass> Load = new("trip.load", "kg", "everything that stands on the ice when the trip gathers", x => x.Kilograms);

    /// <summary>Every key, in the order of the docs.</summary>
    public static IReadOnlyList<FigureKey> All { get; } = [People, Shelters, Unmet, Moved, Load];
}
