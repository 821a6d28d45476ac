using CrewBot.Storage.Connections;

namespace CrewBot.Storage.Outbox;

/// <summary>Posts what is due: at least once, in order, with growing pauses after failures.</summary>
public sealed class OutboxPump(Database database, IOutboxSender sender, TimeProvider clock)
{
    /// <summary>After so many attempts in vain a message is given up: with the pauses below, after about two hours.</summary>
    public const int MostAttempts = 30;

    private const int MostAtOnce = 20;

    private static readonly TimeSpan LongestPause = TimeSpan.FromMinutes(5);

    /// <summary>How long to wait after a number of attempts in vain: 1, 2, 4 … seconds, at most 5 minutes.</summary>
    public static TimeSpan PauseAfter(long attempts) =>
        attempts > 8 ? LongestPause : TimeSpan.FromSeconds(Math.Min(LongestPause.TotalSeconds, Math.Pow(2, attempts - 1)));

    /// <summary>Posts what is due in every crew.</summary>
    /// <returns>How many messages were posted.</returns>
    public async Task<int> PumpAsync(CancellationToken cancellationToken)
    {
        var posted = 0;
        foreach (var crew in await database.CrewsAsync(cancellationToken))
        {
            posted += await PumpAsync(crew, cancellationToken);
        }

        return posted;
    }

    private async Task<int> PumpAsync(string crew, CancellationToken cancellationToken)
    {
        var due = await database.ReadAsync(crew, session => new OutboxRepository(session).DueAsync(clock.GetUtcNow(), MostAtOnce), cancellationToken);
        for (var posted = 0; posted < due.Count; posted++)
        {
            // Order matters to readers: what follows a message that failed waits behind it.
            if (!await TrySendAsync(crew, due[posted], cancellationToken))
            {
                return posted;
            }
        }

        return due.Count;
    }

    private async Task<bool> TrySendAsync(string crew, OutboxMessage message, CancellationToken cancellationToken)
    {
        try
        {
            await sender.SendAsync(crew, message, cancellationToken);
        }
        catch (OperationCanceledException) when (cancellationToken.IsCancellationRequested)
        {
            throw;
        }
#pragma warning disable CA1031 // Whatever keeps a message from its readers, it is kept and tried again.
        catch (Exception fault)
#pragma warning restore CA1031
        {
            var attempts = message.Attempts + 1;
            DateTimeOffset? again = fault is MessageRefusedException || attempts >= MostAttempts ? null : clock.GetUtcNow() + PauseAfter(attempts);
            await database.WriteAsync(
                crew, session => new OutboxRepository(session).PutOffAsync(message.Id, again, fault.Message), cancellationToken);
            return false;
        }

        // A fall between posting and this leaves the message for another attempt: hence the nonce.
        await database.WriteAsync(crew, session => new OutboxRepository(session).RemoveAsync(message.Id), cancellationToken);
        return true;
    }
}
