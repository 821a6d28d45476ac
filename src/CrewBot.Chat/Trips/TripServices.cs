using CrewBot.Chat.Commands;
using CrewBot.Chat.Trips.Unasked;
using Microsoft.Extensions.DependencyInjection;

namespace CrewBot.Chat.Trips;

/// <summary>Registers the trip commands.</summary>
internal static class TripServices
{
    public static IServiceCollection AddTrips(this IServiceCollection services) => services
        .AddSingleton<TripOptions>()
        .AddSingleton<TripPosts>()
        .AddSingleton<TripDesk>()
        .AddSingleton<ICommandHandler, PlanTrip>()
        .AddSingleton<ICommandHandler, ShowTrip>()
        .AddSingleton<ICommandHandler, ChangeTrip>()
        .AddSingleton<ICommandHandler, CancelTrip>()
        .AddSingleton<ICommandHandler, JoinTrip>()
        .AddSingleton<ICommandHandler, BringGear>()
        .AddSingleton<ICommandHandler, NeedGear>()
        .AddSingleton<ICommandHandler, SeatTrip>()
        .AddSingleton<ICommandHandler, LoadTrip>()
        .AddSingleton<ICommandHandler, GoOut>()
        .AddSingleton<ICommandHandler, ComeBack>()
        .AddSingleton<ICommandHandler, RunLate>()
        .AddSingleton<ICommandHandler, PackTrip>()
        .AddSingleton<ICommandHandler, FrameTrip>()
        .AddSingleton<ICommandHandler, FileTrip>();
}
