using CrewBot.Chat.Commands;
using CrewBot.Storage.Outbox;
using Microsoft.Extensions.Hosting;
using Microsoft.Extensions.Logging;

namespace CrewBot.Worker.Background;

/// <summary>Brings what was said to its readers for as long as the process runs.</summary>
internal sealed class PostService(CrewBook book, IPostSender sender, TimeProvider clock, ILogger<PostPump> log) : BackgroundService
{
    protected override async Task ExecuteAsync(CancellationToken stoppingToken)
    {
        try
        {
            var database = await book.DatabaseAsync(stoppingToken);
            await new PostPump(database, sender, clock, log).RunAsync(stoppingToken);
        }
        catch (OperationCanceledException) when (stoppingToken.IsCancellationRequested)
        {
            // It was stopped before anything was stored.
        }
    }
}
