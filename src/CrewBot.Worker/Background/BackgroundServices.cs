using CrewBot.Storage.Outbox;
using Microsoft.Extensions.DependencyInjection;

namespace CrewBot.Worker.Background;

/// <summary>Registers what goes on beside the rooms.</summary>
internal static class BackgroundServices
{
    /// <summary>Adds the work that nobody asks for.</summary>
    public static void AddBackground(this IServiceCollection services)
    {
        services.AddSingleton<IPostSender, RoomPosts>();
        services.AddHostedService<PostService>();
        services.AddHostedService<ForgettingService>();
    }
}
