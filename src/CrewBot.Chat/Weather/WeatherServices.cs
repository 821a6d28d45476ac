using CrewBot.Chat.Commands;
using Microsoft.Extensions.DependencyInjection;

namespace CrewBot.Chat.Weather;

/// <summary>Registers the weather commands.</summary>
internal static class WeatherServices
{
    public static IServiceCollection AddWeather(this IServiceCollection services) => services
        .AddSingleton<ICommandHandler, ShowChill>()
        .AddSingleton<ICommandHandler, ShowLight>()
        .AddSingleton<ICommandHandler, HeatShelter>();
}
