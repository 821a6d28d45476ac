using CrewBot.Chat.Commands;
using CrewBot.Core.Ice;
using CrewBot.Core.Knowledge;
using CrewBot.Core.Trips;
using UnitsNet;

namespace CrewBot.Chat.Ice;

/// <summary>Makes a load of what a request names.</summary>
internal static class IceLoadRead
{
    /// <summary>The load, or in a line what is missing.</summary>
    public static Reading<IceLoad> Of(Request request, IceOptions options)
    {
        var people = request.GetOr(options.People, 1);
        var hasShelter = request.TryGet(options.Shelter, out var shelter);
        if (hasShelter && shelter!.Family != GearFamily.Shelter)
        {
            return new Misread($"{shelter.Name} is no shelter: give its weight with weight:40lb.");
        }

        var hasMachine = request.TryGet(options.Machine, out var machine);
        if (hasMachine && !request.Has(options.Weight) && !NeedsNoWeight(request, options))
        {
            return new Misread("Say what the machine and what it pulls weigh, such as weight:600lb.");
        }

        var total = GatheredLoad.Of(people, []).Total
            + (hasShelter ? shelter!.Mass : Mass.Zero)
            + (request.TryGet(options.Weight, out var weight) ? weight : Mass.Zero);
        // What weighs as much as a second person is no lone walker's, whatever it is.
        var use = hasMachine ? machine : total > GatheredLoad.Of(1, []).Total * 2 || people > 1 || hasShelter ? IceUse.Gathering : IceUse.OnFoot;
        return new IceLoad(use, total, request.GetOr(options.Stay, Duration.Zero));
    }

    /// <summary>Whether nobody said what a car or a truck weighs that nobody permits there: it stays ashore whatever that is.</summary>
    public static bool NeedsNoWeight(Request request, IceOptions options) =>
        !request.Has(options.Weight) && request.TryGet(options.Machine, out var machine)
        && new IceLoad(machine, Mass.Zero, Duration.Zero).IsRoadVehicle
        && !request.GetOr(options.Permitted, false);
}
