using CrewBot.Discord.Wire;

namespace CrewBot.Discord.Mapping;

/// <summary>Of the requests that a person sends while typing, works on the newest alone: an older one is dropped.</summary>
internal sealed class NewestOnly
{
    private readonly Lock _gate = new();
    private readonly Dictionary<Snowflake, (Snowflake Id, CancellationTokenSource Drop)> _open = [];

    /// <summary>Does the work unless a newer request of the same person is there, or comes in meanwhile.</summary>
    /// <exception cref="OperationCanceledException">A newer one came, or everything stops.</exception>
    public async Task RunAsync(Snowflake person, Snowflake id, Func<CancellationToken, Task> work, CancellationToken cancellationToken)
    {
        using var drop = CancellationTokenSource.CreateLinkedTokenSource(cancellationToken);
        Enter(person, id, drop);
        try
        {
            await work(drop.Token);
        }
        finally
        {
            Leave(person, id);
        }
    }

    private void Enter(Snowflake person, Snowflake id, CancellationTokenSource drop)
    {
        lock (_gate)
        {
            if (_open.TryGetValue(person, out var other))
            {
                // They may come in out of order: ids sort by time.
                if (other.Id.Value > id.Value)
                {
                    throw new OperationCanceledException();
                }

                other.Drop.Cancel();
            }

            _open[person] = (id, drop);
        }
    }

    private void Leave(Snowflake person, Snowflake id)
    {
        lock (_gate)
        {
            if (_open.TryGetValue(person, out var newest) && newest.Id == id)
            {
                _open.Remove(person);
            }
        }
    }
}
