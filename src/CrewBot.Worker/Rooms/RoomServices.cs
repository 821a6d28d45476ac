using CrewBot.Chat.Commands;
using CrewBot.Chat.Posts;
using CrewBot.Discord;
using CrewBot.Discord.Mapping;
using CrewBot.Worker.Configuration;
using CrewBot.Worker.Rooms.Editing;
using CrewBot.Worker.Rooms.Rendering;
using Microsoft.Extensions.DependencyInjection;

namespace CrewBot.Worker.Rooms;

/// <summary>Registers the rooms.</summary>
internal static class RoomServices
{
    /// <summary>Adds what answers one command.</summary>
    public static void AddSay(this IServiceCollection services, bool drawsAll)
    {
        services.AddConversation(drawsAll);
        services.AddSingleton<SayOnce>();
    }

    /// <summary>Adds the room in this terminal, which opens as soon as the host runs.</summary>
    public static void AddTerminalRoom(this IServiceCollection services, bool drawsAll)
    {
        services.AddConversation(drawsAll);
        services.AddSingleton(provider => ConsoleOutput.Open(provider.GetRequiredService<Surroundings>()));
        services.AddSingleton<ReplyRenderer>();
        services.AddSingleton<InlinePictures>();
        services.AddSingleton(LinesFor);
        services.AddSingleton<IChatPost, TerminalPosts>();
        services.AddSingleton<TerminalRoom>();
        services.AddHostedService(provider => provider.GetRequiredService<TerminalRoom>());
    }

    /// <summary>Adds the crew's Discord, which is joined as soon as the host runs.</summary>
    public static void AddDiscordRoom(this IServiceCollection services, DiscordOptions options)
    {
        services.AddSingleton(options);
        services.AddSingleton<DiscordRoom>();
        services.AddSingleton(provider => provider.GetRequiredService<DiscordRoom>().Posts);
        services.AddSingleton<DiscordRoomService>();
        services.AddHostedService(provider => provider.GetRequiredService<DiscordRoomService>());
    }

    private static void AddConversation(this IServiceCollection services, bool drawsAll) => services.AddSingleton(provider =>
    {
        var conversation = ActivatorUtilities.CreateInstance<Conversation>(provider);
        conversation.DrawsAll = drawsAll;
        return conversation;
    });

    // A line is edited where a person sees it and the terminal can move its cursor.
    private static ILineSource LinesFor(IServiceProvider services)
    {
        var surroundings = services.GetRequiredService<Surroundings>();
        if (surroundings is not { InputIsTerminal: true, OutputIsTerminal: true } || surroundings.Environment.GetValueOrDefault("TERM") == "dumb")
        {
            return new PlainLines(surroundings);
        }

        var file = HistoryFile.Of(surroundings.Environment);
        return new LineEditor(
            new ConsoleTerminal(surroundings),
            new Completer(services.GetRequiredService<CommandCatalog>()),
            new History(file?.Read() ?? []),
            file);
    }
}
