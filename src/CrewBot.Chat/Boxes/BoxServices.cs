using CrewBot.Chat.Commands;
using Microsoft.Extensions.DependencyInjection;

namespace CrewBot.Chat.Boxes;

/// <summary>Registers the commands on what anglers own.</summary>
internal static class BoxServices
{
    public static IServiceCollection AddBoxes(this IServiceCollection services)
    {
        services.AddSingleton<BoxOptions>();
        services.AddSingleton<TackleDesk>();
        services.AddSingleton<ICommandHandler, AddToBox>();
        services.AddSingleton<ICommandHandler, RemoveFromBox>();
        services.AddSingleton<ICommandHandler, ShowBox>();
        return services;
    }
}
