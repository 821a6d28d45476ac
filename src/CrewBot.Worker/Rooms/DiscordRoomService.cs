using CrewBot.Discord;
using CrewBot.Discord.Mapping;
using CrewBot.Worker.Configuration;
using CrewBot.Worker.Rooms.Rendering;
using Microsoft.Extensions.Hosting;

namespace CrewBot.Worker.Rooms;

/// <summary>Keeps the crew's Discord joined for as long as the process runs.</summary>
internal sealed class DiscordRoomService(DiscordRoom room, Surroundings surroundings, IHostApplicationLifetime lifetime)
    : BackgroundService
{
    /// <summary>What the process shall tell: a supervisor must learn that only a person can help.</summary>
    public int ExitCode { get; private set; }

    protected override async Task ExecuteAsync(CancellationToken stoppingToken)
    {
        ExitCode = Configuration.ExitCode.Failed;
        try
        {
            await room.RunAsync(stoppingToken);
            ExitCode = Configuration.ExitCode.Answered;
        }
        catch (DiscordFatalException fatal)
        {
            ExitCode = Configuration.ExitCode.NeedsAPerson;
            await surroundings.Error.WriteLineAsync(SafeText.Of(fatal.Message));
        }
        finally
        {
            lifetime.StopApplication();
        }
    }
}
