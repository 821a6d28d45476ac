using CrewBot.Chat.Commands;
using CrewBot.Core.Knowledge;
using CrewBot.Worker.Demos;
using CrewBot.Worker.Rooms;
using CrewBot.Worker.Rooms.Rendering;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Hosting;

namespace CrewBot.Worker.Configuration;

/// <summary>Starts what the arguments ask for, or says in one line a fault why not.</summary>
internal static class Start
{
    /// <summary>Runs the process.</summary>
    /// <returns>The exit code.</returns>
    public static Task<int> RunAsync(string[] args, Surroundings surroundings)
    {
        // Reading the knowledge is a third of a short run: it goes on beside the arguments and the settings.
        _ = Task.Run(() => TradeKnowledge.BuiltIn);
        return new ArgumentsReader(surroundings, arguments => RunAsync(arguments, surroundings)).RunAsync(args);
    }

    private static async Task<int> RunAsync(ProcessArguments arguments, Surroundings surroundings)
    {
        var reading = SettingsReader.Read(arguments.ConfigFile, surroundings.Environment);
        if (reading.Settings is not { } settings)
        {
            return Refuse(reading.Faults, surroundings);
        }

        if (arguments.SelfCheck)
        {
            return await new SelfCheck(settings, surroundings).RunAsync(CancellationToken.None);
        }

        if (arguments.Copy is { } copy)
        {
            return await new CopyOnce(settings, surroundings).RunAsync(copy);
        }

        if (arguments.Demo && DemoOnce.FindObstacle(settings) is { } obstacle)
        {
            return Refuse([obstacle], surroundings);
        }

        var (knowledge, faults) = KnowledgeFile.Read(settings.KnowledgeFile);
        if (knowledge is null)
        {
            return Refuse(faults, surroundings);
        }

        await using var book = settings.Database is { } database ? CrewBook.At(database) : CrewBook.None;
        using var host = Composition.Build(arguments, settings, knowledge, book, surroundings);
        if (arguments.Say is { } say)
        {
            return await host.Services.GetRequiredService<SayOnce>().RunAsync(say, CancellationToken.None);
        }

        if (arguments.Demo)
        {
            return await host.Services.GetRequiredService<DemoOnce>().RunAsync(CancellationToken.None);
        }

        var discord = host.Services.GetService<DiscordRoomService>();
        var terminal = host.Services.GetService<TerminalRoom>();
        await host.RunAsync();
        return discord is { ExitCode: not ExitCode.Answered } failed ? failed.ExitCode : terminal?.ExitCode ?? ExitCode.Answered;
    }

    private static int Refuse(IEnumerable<string> faults, Surroundings surroundings)
    {
        foreach (var fault in faults)
        {
            surroundings.Error.WriteLine(SafeText.Of(fault));
        }

        return ExitCode.Unusable;
    }
}
