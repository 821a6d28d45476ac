using CrewBot.Chat.Commands;
using Microsoft.Extensions.DependencyInjection;

namespace CrewBot.Chat.CatchFiles;

/// <summary>Registers the commands that take the log out and in.</summary>
internal static class CatchFileServices
{
    public static IServiceCollection AddCatchFiles(this IServiceCollection services) => services
        .AddSingleton<CatchFileOptions>()
        .AddSingleton<ICommandHandler, ExportCatches>()
        .AddSingleton<ICommandHandler, ImportCatches>();
}
