using CrewBot.Chat.Commands;
using CrewBot.Storage;
using CrewBot.Storage.Buttons;
using CrewBot.Storage.Connections;
using CrewBot.Storage.Outbox;
using CrewBot.Storage.Requests;
using Microsoft.Extensions.Hosting;
using Microsoft.Extensions.Logging;

namespace CrewBot.Worker.Background;

/// <summary>Forgets, once a day and crew by crew, what is kept for a time only: first answers, commands behind buttons, and posts of seasons ago.</summary>
internal sealed class ForgettingService(CrewBook book, TimeProvider clock, ILogger<ForgettingService> log) : BackgroundService
{
    /// <summary>How often it looks.</summary>
    public static readonly TimeSpan Pause = TimeSpan.FromDays(1);

    protected override async Task ExecuteAsync(CancellationToken stoppingToken)
    {
        try
        {
            var database = await book.DatabaseAsync(stoppingToken);
            using var days = new PeriodicTimer(Pause, clock);
            do
            {
                await ForgetAsync(database, stoppingToken);
            }
            while (await days.WaitForNextTickAsync(stoppingToken));
        }
        catch (OperationCanceledException) when (stoppingToken.IsCancellationRequested)
        {
            // What is not forgotten today is forgotten at the next start.
        }
    }

    private async Task ForgetAsync(Database database, CancellationToken cancellationToken)
    {
        var now = clock.GetUtcNow();
        try
        {
            foreach (var crew in await database.CrewsAsync(cancellationToken))
            {
                await database.WriteAsync(
                    crew,
                    async session =>
                    {
                        await new RequestRepository(session).ForgetAsync(now - RequestRepository.Kept);
                        await new ButtonRepository(session).ForgetAsync(now - ButtonRepository.Kept);
                        await new PostRepository(session).ForgetAsync(now - PostRepository.Kept);
                    },
                    cancellationToken);
            }

            log.LogDebug("What was kept for a time only is forgotten.");
        }
        catch (StorageException fault)
        {
            log.LogWarning("Forgetting waits until tomorrow: {Reason}", fault.Message);
        }
    }
}
