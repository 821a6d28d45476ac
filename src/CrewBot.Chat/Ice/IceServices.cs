using CrewBot.Chat.Commands;
using Microsoft.Extensions.DependencyInjection;

namespace CrewBot.Chat.Ice;

/// <summary>Registers the ice commands.</summary>
internal static class IceServices
{
    public static IServiceCollection AddIce(this IServiceCollection services) => services
        .AddSingleton<IceOptions>()
        .AddSingleton<IceShorthand>()
        .AddSingleton<ReportIce>()
        .AddSingleton<ICommandHandler>(services => services.GetRequiredService<ReportIce>())
        .AddSingleton<ICommandHandler, RelayIcePost>()
        .AddSingleton<ICommandHandler, ShowIceBoard>()
        .AddSingleton<ICommandHandler, CarryOnIce>()
        .AddSingleton<ICommandHandler, GrowIce>()
        .AddSingleton<ICommandHandler, CorrectIce>()
        .AddSingleton<ICommandHandler, WithdrawIce>()
        .AddSingleton<ICommandHandler, CloseBadNews>()
        .AddSingleton<ICommandHandler, FollowIce>()
        .AddSingleton<ICommandHandler, LeaveIce>()
        .AddSingleton<ICommandHandler, ShareIce>()
        .AddSingleton<ICommandHandler, SetIceRules>();
}
