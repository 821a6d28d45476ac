using CrewBot.Chat;
using CrewBot.Chat.Commands;
using CrewBot.Chat.Photos;
using CrewBot.Core.Knowledge;
using CrewBot.Worker.Background;
using CrewBot.Worker.Demos;
using CrewBot.Worker.Photos;
using CrewBot.Worker.Pictures;
using CrewBot.Worker.Rooms;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Hosting;
using Microsoft.Extensions.Logging;

namespace CrewBot.Worker.Configuration;

/// <summary>Puts the process together.</summary>
internal static class Composition
{
    /// <summary>The host for a room or for one command: the same parts, started or not.</summary>
    public static IHost Build(ProcessArguments arguments, Settings settings, TradeKnowledge knowledge, CrewBook book, Surroundings surroundings)
    {
        // The configuration is read and checked before; the host's defaults would read it again and watch files.
        var builder = Host.CreateEmptyApplicationBuilder(new HostApplicationBuilderSettings { DisableDefaults = true });
        builder.Logging
            .SetMinimumLevel(LogLevel.Warning)
            .AddFilter("CrewBot.Discord", IsService(settings, surroundings) ? LogLevel.Information : LogLevel.Warning)
            .AddSimpleConsole()
            .AddConsole(console => console.LogToStandardErrorThreshold = LogLevel.Trace);

        var services = builder.Services;
        services.AddSingleton(surroundings);
        services.AddSingleton(TimeProvider.System);
        services.AddSingleton(new Caller(arguments.Identity.Crew, arguments.Identity.Member, arguments.Identity.Role, settings.Units)
        {
            Zone = TimeZoneInfo.Local,
            FilesAreHere = true,
        });
        services.AddSingleton(new FileFolder(arguments.FilesFolder, arguments.PicturesFolder));
        services.AddSingleton<IPictureDrawer>(provider => new DrawingDesk(
            Artist.Draw, provider.GetRequiredService<TimeProvider>(), provider.GetRequiredService<ILogger<DrawingDesk>>()));
        if (settings.PhotoFolder is { } photos)
        {
            services.AddSingleton<IPhotoCopies>(provider => new PhotoFolder(
                photos, settings.PhotoMegabytes * PhotoFolder.Megabyte, provider.GetRequiredService<ILogger<PhotoFolder>>()));
        }

        services.AddChat(knowledge, book);
        var drawsAll = arguments.PicturesFolder is not null;
        if (arguments.Say is not null)
        {
            services.AddSay(drawsAll);
            return builder.Build();
        }

        if (arguments.Demo)
        {
            services.AddSingleton<DemoOnce>();
            return builder.Build();
        }

        if (settings.Discord is { } discord)
        {
            services.AddDiscordRoom(discord);
        }

        if (!IsService(settings, surroundings))
        {
            services.AddTerminalRoom(drawsAll);
        }

        services.AddBackground();
        return builder.Build();
    }

    // A service has no one at its terminal: its input may be closed, which must not close the crew's room.
    private static bool IsService(Settings settings, Surroundings surroundings) =>
        settings.Discord is not null && !surroundings.InputIsTerminal;
}
