using Microsoft.Extensions.Logging;

namespace CrewBot.Discord.Gateway;

/// <summary>
/// Beats at the interval that Hello gave and watches that each beat is acknowledged before the next is due. Belongs to
/// one connection: nothing of it survives into the next.
/// </summary>
internal sealed class Heartbeat(
    TimeSpan interval, Func<CancellationToken, Task> send, Action onSilence, TimeProvider clock, ILogger log)
{
    private volatile bool _acknowledged = true;

    public void Acknowledge() => _acknowledged = true;

    /// <summary>
    /// Runs until cancelled or until a beat went unacknowledged. Of the first interval it waits only the given share, from
    /// 0 to 1, so that bots do not beat in step.
    /// </summary>
    public async Task RunAsync(double firstShare, CancellationToken cancellationToken)
    {
        try
        {
            await Task.Delay(interval * firstShare, clock, cancellationToken);
            while (_acknowledged)
            {
                _acknowledged = false;
                await send(cancellationToken);
                await Task.Delay(interval, clock, cancellationToken);
            }

            log.LogWarning("The gateway acknowledged no heartbeat for {Seconds:0.#} s", interval.TotalSeconds);
            onSilence();
        }
        catch (OperationCanceledException) when (cancellationToken.IsCancellationRequested)
        {
        }
    }
}
