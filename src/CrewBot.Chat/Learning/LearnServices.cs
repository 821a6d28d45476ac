using CrewBot.Chat.Commands;
using Microsoft.Extensions.DependencyInjection;

namespace CrewBot.Chat.Learning;

/// <summary>Registers what a crew's fishing teaches.</summary>
internal static class LearnServices
{
    public static IServiceCollection AddLearning(this IServiceCollection services)
    {
        services.AddSingleton<LearnOptions>();
        services.AddSingleton<ExperienceDesk>();
        services.AddSingleton<ICommandHandler, LearnCatches>();
        return services;
    }
}
