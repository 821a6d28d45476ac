using CrewBot.Worker.Configuration;
using CrewBot.Worker.Rooms.Rendering;
using Microsoft.Extensions.DependencyInjection;

namespace CrewBot.Worker.Rooms;

/// <summary>Registers the rooms.</summary>
internal static class RoomServices
{
    /// <summary>Adds what answers one command.</summary>
    public static void AddSay(this IServiceCollection services)
    {
        services.AddSingleton<Conversation>();
        services.AddSingleton<SayOnce>();
    }

    /// <summary>Adds the room in this terminal, which opens as soon as the host runs.</summary>
    public static void AddTerminalRoom(this IServiceCollection services)
    {
        services.AddSingleton<Conversation>();
        services.AddSingleton(provider => ConsoleOutput.Open(provider.GetRequiredService<Surroundings>()));
        services.AddSingleton<ReplyRenderer>();
        services.AddSingleton<ILineSource, PlainLines>();
        services.AddSingleton<TerminalRoom>();
        services.AddHostedService(provider => provider.GetRequiredService<TerminalRoom>());
    }
}
